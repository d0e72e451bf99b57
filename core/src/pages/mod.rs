//! What a screen shows and offers, as plain data: worded, in the reader's units.
//!
//! | file | what it does |
//! | --- | --- |
//! | `page` | the pages and their addresses |
//! | `command_kind`, `ask`, `forms` | the commands, and what each asks |
//! | `entry` | what was typed, chosen or sensed |
//! | `desk`, `offer`, `inputs`, `listed`, `scale` | offers, with the rules of their inputs in the reader's units |
//! | `line` | one line of a page: what is there, what is missing, why it matters |
//! | `apart`, `trees_sought` | the worst of many conflicts; one tree of many |
//! | `headings` | the heading of every list, and what an empty one is for |
//! | `looks` | what was seen on a tree |
//! | `drawn` | the drawings of the pages |
//! | one file a page | `book`, `settings`, `codebook`, `rule_set`, `people`, `person`, `gear`, `site`, `tree`, `finding`, `anchor`, `judgement`, `hand_over` |
//!
//! Pure: no clock, no disk, no store. `field_book` hands in what is kept and judged.

mod aloft;
mod anchor;
mod apart;
mod ask;
mod book;
mod codebook;
mod command_kind;
mod compare;
mod compared;
mod desk;
mod drawn;
mod entry;
mod finding;
mod forms;
mod gaps;
mod gear;
mod hand_over;
mod headings;
mod inputs;
mod judgement;
mod line;
mod listed;
mod looks;
mod measured;
mod narrowed;
mod next_measurement;
mod offer;
mod page;
mod people;
mod person;
mod rule_set;
mod scale;
mod section_left;
mod settings;
mod signed;
mod site;
mod site_around;
mod site_trees;
mod site_work;
mod size_class;
mod species;
mod stem_section;
mod tree;
mod tree_lines;
mod tree_offers;
mod tree_records;
mod trees_sought;
mod walk;
mod weather;
mod zones;

pub use aloft::{AloftPage, aloft_page};
pub use anchor::{AnchorPage, anchor_of, anchor_page};
pub use ask::{Ask, AskKind, Listed};
pub use book::{BookFacts, BookPage, SiteFacts, SiteOfBook, book_page};
pub use codebook::{CodeOfBook, CodebookPage, GradeOfCode, codebook_page};
pub use command_kind::CommandKind;
pub use compare::{
    ChangeKind, ComparePage, ComparedLine, Earlier, compare_page, days_compared, seen_until,
};
pub use compared::{ComparedFinding, FindingFate};
pub use desk::{PageDesk, PhotoPaths, Unsettled};
pub use drawn::{
    DrawingAddress, DrawnSize, EnteredGround, MOST_ZOOM, PlaceOnPlan, PlanOverlay, drawing_of,
    entered_on_plan, me_on_plan, place_on_plan, tree_on_plan,
};
pub use entry::{Entry, EntryValue, SensedFix};
pub use finding::{FindingPage, GradeTile, finding_page};
pub use forms::asks_of;
pub use gaps::PageGap;
pub use gear::{GearOfBook, GearPage, GearState, gear_page};
pub use hand_over::{HandOverPage, hand_over_page};
pub use headings::PageHeading;
pub use inputs::choice_ids;
pub use judgement::{JudgementPage, ScoreOfTree, WorkingOfTree, judgement_page};
pub use line::{LineState, PageLine, PagePhoto, PageRecord, PageWay};
pub use measured::{girth_words, height_words, lean_words};
pub use narrowed::depends;
pub use offer::{InputKind, Offer, OfferedChoice, OfferedInput};
pub use page::{Page, PageAddress};
pub use people::{PeoplePage, PersonOfBook, people_page};
pub use person::{KnotOfPerson, PersonPage, SkillOfPerson, TrainingState, person_page};
pub use rule_set::{RuleOfSet, RuleSetPage, RulesTogether, field_of, is_whole, rule_set_page};
pub use section_left::{SectionSeen, section_seen};
pub use settings::{SettingsFacts, SettingsPage, settings_page};
pub use signed::SignedAnswer;
pub use site::{SitePage, TreeOfSite, site_page};
pub use site_work::ActionOfSite;
pub use size_class::SizeClass;
pub use species::species_suggested;
pub use stem_section::{ClockPoint, StemSectionPage, stem_section_page};
pub use tree::{TreePage, tree_page};
pub use trees_sought::{tree_of_tag, trees_suggested};
pub use walk::{LOOK_LASTS_MS, PartOfWalk};
pub use zones::ZoneOfTree;
