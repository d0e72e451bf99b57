//! The one exported object: a field book opened from a folder.
