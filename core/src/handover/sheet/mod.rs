//! The parts of a climb sheet, in the order they are needed at the foot of the tree.

pub(super) mod anchor;
pub(super) mod cautions;
pub(super) mod pace;
pub(super) mod rescue;
pub(super) mod verdict;
pub(super) mod who;
