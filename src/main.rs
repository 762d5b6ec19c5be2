//! The `wardsheet` command.

fn main() {}
