//! Numbers and sentences: reading what was typed, writing figures, saying what is wrong.
