//! What is asked of a site.

use crate::pages::ask::{Ask, AskKind, Listed};

pub(super) const SITE: &[Ask] = &[
    Ask::needed("site.name", "name", AskKind::Text(200)),
    Ask::of("site.client", "client", AskKind::Text(200)),
    Ask::of("site.address", "address", AskKind::Text(400)),
    Ask::of(
        "site.rule_set",
        "rule_set",
        AskKind::OneOf(Listed::RuleSets),
    ),
    Ask::of("site.outline", "outline", AskKind::Outline(3)),
    Ask::of("site.note", "note", AskKind::Text(4000)),
];
