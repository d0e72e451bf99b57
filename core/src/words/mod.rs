//! One catalogue of words for papers and screens; units, numbers and dates by locale.
