//! Text in lines that fit the page.

/// Widest line that the desk prints, in characters.
pub const WIDEST: usize = 100;

/// Lines of text, one below the other.
#[derive(Default)]
pub struct Lines {
    text: String,
}

impl Lines {
    /// An empty line; never two of them.
    pub fn gap(&mut self) {
        if !self.text.is_empty() && !self.text.ends_with("\n\n") {
            self.text.push('\n');
        }
    }

    /// A heading over what follows.
    pub fn heading(&mut self, words: &str) {
        self.gap();
        self.text.push_str(words);
        self.text.push('\n');
    }

    /// Words behind a lead, broken between words; the lines that follow stand under the first.
    pub fn hung(&mut self, lead: &str, words: &str) {
        let indent = lead.chars().count();
        let mut room = WIDEST.saturating_sub(indent).max(20);
        let mut line = lead.to_owned();
        let mut empty = true;
        for word in words.split_whitespace() {
            let length = word.chars().count();
            if !empty && length + 1 > room {
                self.end(&line);
                line = " ".repeat(indent);
                room = WIDEST.saturating_sub(indent).max(20);
                empty = true;
            }
            if !empty {
                line.push(' ');
                room = room.saturating_sub(1);
            }
            line.push_str(word);
            room = room.saturating_sub(length);
            empty = false;
        }
        self.end(&line);
    }

    /// Text that is laid out already.
    pub fn laid(&mut self, text: &str) {
        for line in text.lines() {
            self.end(line);
        }
    }

    fn end(&mut self, line: &str) {
        self.text.push_str(line.trim_end());
        self.text.push('\n');
    }

    /// The whole text.
    pub fn into_text(self) -> String {
        self.text
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_line_is_wider_than_the_page_and_no_word_is_lost() {
        let words = "keep ".repeat(60);
        let mut lines = Lines::default();
        lines.hung("  - ", &words);
        let text = lines.into_text();
        assert!(text.lines().all(|line| line.chars().count() <= WIDEST));
        assert!(
            text.lines()
                .skip(1)
                .all(|line| line.starts_with("    keep"))
        );
        assert_eq!(text.matches("keep").count(), 60);
    }

    #[test]
    fn gaps_do_not_add_up() {
        let mut lines = Lines::default();
        lines.gap();
        lines.laid("a");
        lines.gap();
        lines.gap();
        lines.laid("b");
        assert_eq!(lines.into_text(), "a\n\nb\n");
    }
}
