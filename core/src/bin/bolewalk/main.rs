//! The desk command: what a person at a table does with site files and field books.
//!
//! Exit codes: 0 done, 1 bad input, 2 wrong usage, 3 damaged field book.

mod answer;
mod check;
mod clock;
mod demo;
mod export;
mod import;
mod judge;
mod lines;
mod pack;
mod place;
mod progress;
mod rules;
mod schema;
mod summary;
mod zones;

use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Parser, Subcommand};

/// Tree assessments for climbing arborists: may a tree be climbed, by whom, where must nobody stand.
#[derive(Parser)]
#[command(
    version,
    max_term_width = 100,
    arg_required_else_help = true,
    after_help = TEACHES
)]
struct Desk {
    #[command(subcommand)]
    command: Command,
}

/// What stands under the list of commands.
const TEACHES: &str = "\
To begin:
  bolewalk demo                              a property that does not exist, with all its papers
  bolewalk judge bolewalk-demo               its table again, what to close, and why
  bolewalk judge bolewalk-demo --explain 04  one tree's working, line by line
  bolewalk schema > site-file.schema.json    what a site file of your own may hold

Ends with 0 when done, 1 for bad input, 2 for wrong usage, 3 for a damaged field book.";

#[derive(Subcommand)]
enum Command {
    /// The whole job on an invented property: field book, judgement, papers, map files.
    ///
    /// Makes a folder with a field book of one property that does not exist, prints the judgement
    /// of its trees, and writes the papers and the map files beside it.
    Demo(demo::Asked),
    /// Look over a site file or a field book and tell every fault with its place.
    ///
    /// A site file is checked against its schema, its shapes, its tags and its references; a field
    /// book for damage, missing photos and values that stand side by side.
    Check {
        /// A site file (JSON) or the folder of a field book.
        place: PathBuf,
    },
    /// Bring a site file, a pack, or trees of another origin, into a field book.
    ///
    /// The same file again changes nothing. A pack brings another phone's history with it: what was
    /// entered in two ways stands side by side until somebody settles it. Trees of another origin come as delimited text (any
    /// delimiter, decimal point or comma) or as GeoJSON points; every row becomes a tree or is told
    /// with its line and reason.
    Import(import::Asked),
    /// Judge every tree of a property: may it be climbed, within which limits, who stands where.
    ///
    /// Prints one table, then in words what must be closed, moved, guarded or emptied, which trees
    /// may not be worked on together, and the reasons tree by tree. It never says that a tree is
    /// safe; what nobody looked at is a gap, not a pass.
    Judge(judge::Asked),
    /// Drop zone and keep-out distance of every tree of a site file, a line per way of working.
    ///
    /// Each line names the rule that fixed it and its source. What is missing is told, never
    /// guessed.
    Zones {
        /// The site file (JSON).
        file: PathBuf,
        /// Only the tree with this tag.
        #[arg(long)]
        tag: Option<String>,
        /// Feet instead of metres.
        #[arg(long)]
        imperial: bool,
    },
    /// Write the client's site summary and the crew's climb sheets as PDF.
    ///
    /// The summary tells a client what was seen, what is proposed and what to close; it carries
    /// neither score nor verdict. The climb sheets are a page a tree for the crew at its foot.
    Summary(summary::Asked),
    /// Write GeoPackage, GeoJSON and a table of the trees, for maps and spreadsheets.
    ///
    /// The layers are trees, zones, targets, overhead lines and the outline. A tree without a
    /// position has no point on the map, but stands in every table.
    Export(export::Asked),
    /// Write a property of a field book as a pack: one file with its history, people and photos.
    ///
    /// Another phone or desk takes it in beside what it has; whoever takes it in twice, or in
    /// another order, ends up with the same.
    Pack(pack::Asked),
    /// Print the JSON Schema of the site file, for editors and other programs.
    Schema,
    /// Print a rule set: every distance, factor and threshold with its unit and its source.
    Rules {
        /// The rule set.
        #[arg(default_value = "us")]
        id: String,
        /// Only rows whose id contains this, such as `zone` or `wire`.
        #[arg(long)]
        only: Option<String>,
        /// Print JSON instead of a list.
        #[arg(long)]
        json: bool,
    },
}

fn main() -> ExitCode {
    let done = match Desk::parse().command {
        Command::Check { place } => check::check(&place),
        Command::Import(asked) => import::import(&asked),
        Command::Demo(asked) => demo::demo(&asked),
        Command::Pack(asked) => pack::pack(&asked),
        Command::Export(asked) => export::export(&asked),
        Command::Summary(asked) => summary::summary(&asked),
        Command::Judge(asked) => judge::judge(&asked),
        Command::Zones {
            file,
            tag,
            imperial,
        } => zones::zones(&file, tag.as_deref(), imperial),
        Command::Schema => schema::schema(),
        Command::Rules { id, only, json } => rules::rules(&id, only.as_deref(), json),
    };
    match done {
        Ok(code) => code,
        Err(error) => answer::explain(&error),
    }
}
