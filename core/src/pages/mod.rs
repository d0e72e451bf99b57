//! What a screen shows and what it offers, as plain data.
