//! The chores of the project: serve, build, test, check, bench, dist.

fn main() {}
