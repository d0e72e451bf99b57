//! Search that forgives case and accents: `Muller` finds `Müller`, `lodz` finds `Łódź`.

use icu_normalizer::DecomposingNormalizerBorrowed;

/// A text as search compares it: without case, accents and width, letters that carry their accent
/// inside taken apart (`ø` as `o`, `ß` as `ss`), whatever is no letter and no digit as a space.
pub fn folded(text: &str) -> String {
    let plain = DecomposingNormalizerBorrowed::new_nfkd().normalize(text);
    let mut folded = String::with_capacity(plain.len());
    for letter in plain.chars().flat_map(char::to_lowercase) {
        match letter {
            // Combining marks: the Unicode block at U+0300.
            '\u{0300}'..='\u{036f}' => {}
            'ß' => folded.push_str("ss"),
            'æ' => folded.push_str("ae"),
            'œ' => folded.push_str("oe"),
            'ø' => folded.push('o'),
            'ł' => folded.push('l'),
            'đ' | 'ð' => folded.push('d'),
            'þ' => folded.push_str("th"),
            'ı' => folded.push('i'),
            _ if letter.is_alphanumeric() => folded.push(letter),
            _ => folded.push(' '),
        }
    }
    folded
}

/// What a person searches for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Search {
    parts: Vec<String>,
}

impl Search {
    /// What was typed; the words of it may stand anywhere and in any order.
    pub fn of(typed: &str) -> Search {
        let folded = folded(typed);
        Search {
            parts: folded.split_whitespace().map(str::to_owned).collect(),
        }
    }

    /// Whether nothing is searched for, so that everything fits.
    pub fn is_empty(&self) -> bool {
        self.parts.is_empty()
    }

    /// Whether every word is found in one of the texts.
    pub fn fits(&self, texts: &[&str]) -> bool {
        if self.is_empty() {
            return true;
        }
        let texts: Vec<String> = texts.iter().map(|text| folded(text)).collect();
        let found = |part: &String| texts.iter().any(|text| text.contains(part.as_str()));
        self.parts.iter().all(found)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn case_accents_and_order_are_forgiven() {
        let fits = |typed: &str, text: &str| Search::of(typed).fits(&[text]);
        assert!(fits("muller", "Müller, Hof 3"));
        assert!(fits("HOF mül", "Müller, Hof 3"));
        assert!(fits("lodz", "Łódź"));
        assert!(fits("strasse", "Hohe Straße"));
        assert!(fits("penon", "Finca El Peñón"));
        assert!(fits("  ", "anything"));
        assert!(!fits("miller", "Müller"));
        assert!(!fits("hof 4", "Müller, Hof 3"));
    }

    #[test]
    fn words_may_stand_in_different_texts() {
        assert!(Search::of("okafor mill").fits(&["Heron Mill", "M. Okafor"]));
    }
}
