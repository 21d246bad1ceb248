//! One vocabulary for everything that is printed, in a terminal and in an editor.

pub mod answer;
pub mod bars;
pub mod bench;
pub mod chain;
pub mod desense;
pub mod exposure;
pub mod figure;
pub mod link;
pub mod piece;
pub mod rules;
pub mod site;
pub mod verdict;
