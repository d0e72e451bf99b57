//! Photo files in and out: pixels, hash names, position, time and direction.
