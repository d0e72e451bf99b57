//! Words with emphasis: what the blocks of a paper are filled with.

use std::ops::Range;

/// A text of which parts may be bold.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Rich {
    /// The words.
    pub text: String,
    /// The bold parts, as byte ranges in rising order.
    pub bold: Vec<Range<usize>>,
}

impl Rich {
    /// An empty text to add to.
    pub fn new() -> Self {
        Rich::default()
    }

    /// The text with `words` added plainly.
    pub fn plain(mut self, words: impl AsRef<str>) -> Self {
        self.text.push_str(words.as_ref());
        self
    }

    /// The text with `words` added in bold.
    pub fn bold(mut self, words: impl AsRef<str>) -> Self {
        let start = self.text.len();
        self.text.push_str(words.as_ref());
        if self.text.len() > start {
            self.bold.push(start..self.text.len());
        }
        self
    }

    /// Whether there is nothing to print.
    pub fn is_empty(&self) -> bool {
        self.text.trim().is_empty()
    }
}

impl From<&str> for Rich {
    fn from(words: &str) -> Self {
        Rich::new().plain(words)
    }
}

impl From<String> for Rich {
    fn from(text: String) -> Self {
        Rich {
            text,
            bold: Vec::new(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bold_parts_keep_their_place() {
        let rich = Rich::new().plain("Nº 7: ").bold("stay away").plain("!");
        assert_eq!(rich.text.get(rich.bold[0].clone()), Some("stay away"));
        assert!(!rich.is_empty() && Rich::new().bold("").is_empty());
    }
}
