//! Chocolate: what goes inside, and the syrup that goes on top.
