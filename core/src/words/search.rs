//! How close what somebody typed comes to a name: accents, capitals and hyphens do not matter, nor
//! do one or two wrong letters, nor which word of the name was begun with.

use super::fold::folded;

/// Letters from which one wrong letter is forgiven, and from which two are.
const FORGIVEN: [usize; 2] = [4, 7];

/// How far what was typed is from a name: 0 for a name that begins so, more for later words and
/// wrong letters; nothing where it is another name.
pub fn closeness(typed: &str, name: &str) -> Option<u32> {
    let (typed, name) = (words_of(typed), words_of(name));
    let first = typed.first()?;
    let whole = name.join(" ");
    if whole.starts_with(&typed.join(" ")) {
        return Some(0);
    }
    // Every word typed has to be found, each in a word of its own.
    let mut left: Vec<(usize, &String)> = name.iter().enumerate().collect();
    let mut far = 0;
    for word in &typed {
        let (at, (place, wrong)) = left
            .iter()
            .enumerate()
            .filter_map(|(at, (place, known))| Some((at, (*place, wrong_letters(word, known)?))))
            .min_by_key(|(_, (place, wrong))| (*wrong, *place))?;
        left.remove(at);
        far += wrong as u32 * 10 + u32::from(word == first && place > 0);
    }
    Some(1 + far)
}

/// Wrong letters between a word typed, perhaps not to its end, and a word of the name; nothing where
/// they are more than is forgiven.
fn wrong_letters(typed: &str, known: &str) -> Option<usize> {
    let typed: Vec<char> = typed.chars().collect();
    let known: Vec<char> = known.chars().collect();
    let forgiven = FORGIVEN.iter().filter(|from| typed.len() >= **from).count();
    // Distances from all that was typed to each beginning of the name; two neighbours that changed
    // places count as one wrong letter (optimal string alignment).
    let mut before: Vec<usize> = Vec::new();
    let mut row: Vec<usize> = (0..=known.len()).collect();
    for (i, letter) in typed.iter().enumerate() {
        let mut next = vec![i + 1];
        for (j, other) in known.iter().enumerate() {
            let at = |row: &[usize], j: usize| row.get(j).copied().unwrap_or(usize::MAX - 9);
            let mut least = (at(&row, j) + usize::from(letter != other))
                .min(at(&row, j + 1) + 1)
                .min(at(&next, j) + 1);
            let swapped = i > 0
                && j > 0
                && typed.get(i - 1) == Some(other)
                && known.get(j - 1) == Some(letter);
            if swapped {
                least = least.min(at(&before, j - 1) + 1);
            }
            next.push(least);
        }
        before = std::mem::replace(&mut row, next);
    }
    row.into_iter().min().filter(|wrong| *wrong <= forgiven)
}

/// Words in plain small letters.
fn words_of(text: &str) -> Vec<String> {
    // An apostrophe does not part a word.
    let whole: String = text
        .chars()
        .filter(|letter| !"'’".contains(*letter))
        .collect();
    let plain = folded(&whole.replace('×', "x"));
    plain.split_whitespace().map(str::to_owned).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_beginning_is_closest_then_a_later_word_then_a_wrong_letter() {
        let red_oak = "northern red oak";
        assert_eq!(closeness("nor", red_oak), Some(0));
        let later = closeness("oak", red_oak).unwrap();
        let wrong = closeness("nortern", red_oak).unwrap();
        assert!(0 < later && later < wrong);
        assert!(closeness("red oak", red_oak).is_some());
        assert!(closeness("maple", red_oak).is_none());
    }

    #[test]
    fn accents_capitals_and_hyphens_do_not_matter() {
        assert_eq!(closeness("ROBLE AMERI", "roble américano"), Some(0));
        assert_eq!(closeness("douglas fir", "Douglas-fir"), Some(0));
        assert_eq!(closeness("platanus × ac", "Platanus x acerifolia"), Some(0));
    }

    #[test]
    fn one_or_two_wrong_letters_are_forgiven_in_words_long_enough() {
        // Common misspellings of Latin names, from memory.
        assert!(closeness("qercus", "Quercus rubra").is_some());
        assert!(closeness("liquidamber", "Liquidambar styraciflua").is_some());
        assert!(closeness("fagus sylvatcia", "Fagus sylvatica").is_some());
        assert!(
            closeness("pni", "pine").is_none(),
            "three letters leave no room"
        );
        assert!(closeness("quarcos", "Quercus rubra").is_some());
        assert!(closeness("querzzz", "Quercus rubra").is_none());
        assert_eq!(closeness("", "oak"), None);
    }
}
