//! The commands that pages offer, each with its stable id.

macro_rules! commands {
    ($($(#[$doc:meta])* $kind:ident = $id:literal,)+) => {
        /// What a person can do; the offers of a page name it, and a shell draws each its own way.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, uniffi::Enum)]
        pub enum CommandKind {
            $($(#[$doc])* $kind,)+
        }

        impl CommandKind {
            /// Every command.
            pub const ALL: &'static [CommandKind] = &[$(CommandKind::$kind,)+];

            /// The stable id, `noun.verb`: test tag of its button, and first part of its words,
            /// `offer.<id>`.
            pub fn id(self) -> &'static str {
                match self {
                    $(CommandKind::$kind => $id,)+
                }
            }
        }
    };
}

commands! {
    /// Changes this phone's settings.
    ChangeSettings = "settings.change",
    /// Makes a site.
    AddSite = "site.add",
    /// Changes a site's own facts.
    ChangeSite = "site.change",
    /// Changes a tree's own facts.
    ChangeTree = "tree.change",
    /// Makes a tree on a site.
    AddTree = "tree.add",
}

impl CommandKind {
    /// The command of this id.
    pub fn of_id(id: &str) -> Option<CommandKind> {
        CommandKind::ALL
            .iter()
            .copied()
            .find(|kind| kind.id() == id)
    }
}
