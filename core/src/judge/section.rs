//! Stem sections with decay: how much of the bending strength is left.
//!
//! Three things, kept apart: the published formulas ([`formulas`]), the exact properties of a ring
//! given by its walls ([`mod@ring`], [`properties`]), and what readings say about the walls, with
//! how little they say about the walls between ([`shell`]).

pub mod formulas;
pub mod left;
pub mod properties;
mod readings;
pub mod ring;
pub mod run;
pub mod shell;

pub use formulas::{
    coder_loss_pct, minimum_shell_cm, opening_deg, opening_ratio, shell_ratio,
    smiley_fraedrich_loss_pct, solid_inertia_cm4, solid_modulus_cm3, wagener_loss_pct,
};
pub use left::StrengthLeft;
pub(crate) use left::{wall_stream, walls_stream};
pub use properties::RingProperties;
pub use ring::{Opened, Ring};
pub use run::{BearingLength, Run};
pub use shell::{Shell, ShellBasis, ShellFormulas, ShellPoint, WallSpread};
