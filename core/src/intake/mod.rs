//! What others wrote becomes records: site files, delimited text, map files; faults with their places.
