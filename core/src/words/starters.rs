//! Words for what ships as data: species and the sentences of the starter codes. Their English
//! stands in the tables; other languages have entries in their catalogue.

use super::catalogue::{Language, Words};
use crate::judge::codebook::starter_codes;
use crate::judge::wood::{Species, species_id};
use crate::record::DefectCode;

impl Words {
    /// The common name of a species: the catalogue's, in English the table's. A language that has no
    /// well-established name for it shows the scientific one.
    pub fn species_name(&self, species: &Species) -> String {
        let key = format!("species.{}", species_id(species));
        match self.language() {
            _ if self.has(&key) => self.say(&key, &[]),
            Language::English => species.common_name.clone(),
            Language::Spanish => species.latin_name.clone(),
        }
    }

    /// What a grade of a code means, where it has a sentence. What the crew wrote stands as it is; a
    /// starter's sentence is shown in the reader's language.
    pub fn grade_sentence(&self, code: &DefectCode, grade: u32) -> Option<String> {
        let own = sentence(code, grade)?;
        let starter = starter_codes().iter().find(|one| one.id == code.id);
        let key = format!("grade.{}-{grade}", code.id);
        let as_shipped = starter.and_then(|one| sentence(one, grade)) == Some(own);
        if as_shipped && self.has(&key) {
            Some(self.say(&key, &[]))
        } else {
            Some(own.to_owned())
        }
    }
}

fn sentence(code: &DefectCode, grade: u32) -> Option<&str> {
    match grade {
        1 => code.grade_1.as_deref(),
        2 => code.grade_2.as_deref(),
        3 => code.grade_3.as_deref(),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::judge::wood::find_species;
    use crate::words::UnitSystem;

    fn spanish() -> Words {
        Words::new(Language::Spanish, UnitSystem::Metric)
    }

    #[test]
    fn every_sentence_of_the_starter_codes_is_there_in_spanish() {
        for code in starter_codes() {
            for grade in 1..=3 {
                let said = spanish().grade_sentence(code, grade).unwrap();
                assert_ne!(Some(said.as_str()), sentence(code, grade), "{}", code.id);
                assert!(said.ends_with('.'), "{said}");
            }
        }
    }

    #[test]
    fn what_the_crew_wrote_stays_as_it_is() {
        let mut code = starter_codes()[0].clone();
        code.grade_2 = Some("Un palmo de suelo levantado.".to_owned());
        let said = spanish().grade_sentence(&code, 2);
        assert_eq!(said.as_deref(), code.grade_2.as_deref());
        assert_eq!(spanish().grade_sentence(&code, 4), None);
    }

    #[test]
    fn a_species_goes_by_its_common_name_or_by_its_scientific_one() {
        let name = |words: Words, latin| words.species_name(find_species(latin).unwrap());
        // Names as in Real Academia Española and common floras; Carya glabra has none in use.
        assert_eq!(name(spanish(), "Acer rubrum"), "arce rojo");
        assert_eq!(name(spanish(), "Carya glabra"), "Carya glabra");
        let english = Words::new(Language::English, UnitSystem::Metric);
        assert_eq!(name(english, "Carya glabra"), "pignut hickory");
    }

    #[test]
    fn every_species_of_the_catalogue_is_in_the_table() {
        for line in Language::Spanish.source().lines() {
            if let Some((id, _)) = line
                .strip_prefix("species-")
                .and_then(|l| l.split_once(" ="))
            {
                let known = crate::judge::wood::all_species();
                assert!(known.iter().any(|one| species_id(one).0 == id), "{id}");
            }
        }
    }
}
