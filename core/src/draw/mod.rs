//! Plans, stem sections and tree profiles as plain marks in metres.
