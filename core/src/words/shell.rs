//! The words of the shell itself: its own buttons, why it asks for camera and position, what it says
//! while it waits. One record for all of them, so that every shell shares them and its compiler
//! refuses one that is not there.

use super::catalogue::{Language, Words};
use super::units::UnitSystem;

macro_rules! shell_words {
    ($($(#[$doc:meta])* $name:ident,)+) => {
        /// The words of the shell itself in one language. Where words take a number, its name stands
        /// in them as `{$count}`: the shell puts the number in its place.
        #[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, uniffi::Record)]
        pub struct ShellWords {
            $($(#[$doc])* pub $name: String,)+
        }

        impl ShellWords {
            /// The words in a language.
            pub fn of(language: Language) -> ShellWords {
                // None of them has a unit.
                let words = Words::new(language, UnitSystem::Metric);
                ShellWords {
                    $($name: words.say(concat!("shell.", stringify!($name)), &[]),)+
                }
            }
        }

        /// The entries of the catalogue that the words of the shell stand in.
        #[cfg(test)]
        const KEYS: &[&str] = &[$(concat!("shell.", stringify!($name)),)+];
    };
}

shell_words! {
    /// While the field book is being opened.
    opening,
    /// Back to the page above.
    go_up,
    /// To the first page.
    go_book,
    /// To the page of the rule set.
    go_rules,
    /// To the page of what is handed over.
    go_hand_over,
    /// To the page of the climb.
    go_aloft,
    /// To the page that sets two looks side by side.
    go_compare,
    /// To the next step.
    go_on,
    /// Closes what lies over the page.
    close,
    /// Sends what was entered.
    keep,
    /// Empties an input.
    clear,
    /// A form opened again with what was entered before.
    draft_kept,
    /// Lets go of what was entered before.
    start_anew,
    /// The answer yes.
    answer_yes,
    /// The answer no.
    answer_no,
    /// A step down on a dial.
    less,
    /// A step up on a dial.
    more,
    /// Zooms in.
    larger,
    /// Zooms out.
    smaller,
    /// Beside the label of an input that the command needs.
    needed,
    /// Said of the choice that is made.
    chosen,
    /// The field that searches a page.
    search,
    /// The field that searches many choices.
    search_list,
    /// Opens the camera.
    take_photo,
    /// Opens the pictures of the phone.
    choose_photo,
    /// After a photo was taken or chosen.
    photo_ready,
    /// Why the camera is asked for, before the system asks.
    camera_wanted,
    /// What to do where the app may not take photos.
    camera_refused,
    /// Opens the files of the phone.
    choose_file,
    /// A file that was chosen gives nothing.
    not_readable,
    /// A file that was chosen is larger than the phone can hold.
    too_large,
    /// Begins to listen for fixes.
    take_position,
    /// Ends listening and takes what there is.
    stop_position,
    /// Why the position is asked for, before the system asks.
    position_wanted,
    /// What to do without a position.
    position_refused,
    /// The phone's position is switched off.
    position_off,
    /// No fix has come yet.
    position_waiting,
    /// While a sensor is read.
    hold_still,
    /// How a bearing is taken.
    take_bearing,
    /// Opens the picture of the camera to aim by.
    aim,
    /// How the angle to base or top is taken.
    take_sight,
    /// How a lean is taken with the camera.
    take_lean,
    /// How an angle is taken without the camera.
    take_tilt,
    /// An angle while it is sensed: `{$degrees}`.
    degrees,
    /// What a screen reader calls the picture to aim by.
    sight_picture,
    /// The app may not use the camera to aim.
    sight_refused,
    /// The camera gives no picture to aim by.
    sight_off,
    /// The phone has no camera to aim by.
    sight_lacking,
    /// No app takes photos.
    no_camera_app,
    /// A photo or a file finds no room.
    no_room,
    /// Opens the system's settings of this app.
    open_settings,
    /// A file that came from nowhere.
    not_handed,
    /// Asks before a file of another app is read.
    handed_title,
    /// What taking it in means.
    handed_what,
    /// Takes the file in.
    handed_take,
    /// Leaves the file.
    handed_leave,
    /// The phone lacks the sensor.
    no_sensor,
    /// Adds a point to an outline.
    add_corner,
    /// Opens the plan in a form, to tap a place on it.
    tap_plan,
    /// Closes the plan in a form.
    close_plan,
    /// What a tap on the plan does.
    plan_wanted,
    /// Takes the last point of an outline away.
    drop_corner,
    /// How many points an outline has: `{$count}`.
    corners,
    /// How many points an outline needs: `{$count}`.
    corners_least,
    /// Opens the calendar.
    pick_day,
    /// An answer takes longer than a moment.
    busy,
    /// How far long work is: `{$done}` and `{$of}`.
    working,
    /// Stops long work.
    stop_work,
    /// After a file was written.
    written,
    /// Opens a file that was written in another app.
    open_file,
    /// Hands a file to another app.
    share,
    /// No other app takes the file.
    no_app,
    /// What a screen reader calls a photo without a caption.
    photo,
    /// What a screen reader calls a drawing before its own words.
    drawing,
    /// What a screen reader says that a tap on a photo does.
    photo_large,
    /// How many inputs of a form are marked as wrong: `{$count}`.
    refused_marked,
    /// Shows or hides what the signs of a drawing mean.
    legend,
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::super::catalogue::catalogue_id;
    use super::*;

    #[test]
    fn every_word_of_the_shell_stands_in_every_catalogue_and_no_other_does() {
        let wanted: BTreeSet<String> = KEYS.iter().map(|key| catalogue_id(key).into()).collect();
        for language in Language::ALL {
            let lines = language.source().lines();
            let ids = lines.filter_map(|line| line.split_once(" ="));
            let there: BTreeSet<String> = ids
                .map(|(id, _)| id.to_owned())
                // How a stem's sound shell was read is a word of the trade.
                .filter(|id| id.starts_with("shell-") && !id.starts_with("shell-method-"))
                .collect();
            assert_eq!(there, wanted, "{language:?}");
        }
    }

    #[test]
    fn numbers_are_put_in_by_the_shell() {
        let words = ShellWords::of(Language::English);
        assert_eq!(words.working, "Working: step {$done} of {$of}");
        assert_eq!(words.corners, "Corners: {$count}");
        assert_eq!(ShellWords::of(Language::Spanish).keep, "Guardar");
    }
}
