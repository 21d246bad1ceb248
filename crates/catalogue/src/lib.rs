//! The built-in library: cables, connectors and devices, written in the language itself.
//!
//! This crate holds text only. A file here is what a user can jump into, read and copy; the
//! figures in it are read by the same code as the user's own. The cable files are written by
//! `tests/tools/make_catalogue.py` from `data/`, the rule files by `tests/tools/make_rules.py`; the other two
//! by hand.

/// One file of the library.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LibraryFile {
    /// File name without a folder, e.g. `cables-rg.downlead`. Unique.
    pub name: &'static str,
    /// Its whole text: UTF-8, lines end in `\n`.
    pub text: &'static str,
}

macro_rules! library {
    ($($name:literal),+ $(,)?) => {
        /// All files, in the order in which `downlead catalogue` shows them. No item name is in two of them.
        pub static FILES: &[LibraryFile] = &[
            $(LibraryFile { name: $name, text: include_str!(concat!("../library/", $name)) }),+
        ];
    };
}

library![
    "cables-rg.downlead",
    "cables-foam.downlead",
    "cables-corrugated.downlead",
    "cables-rigid.downlead",
    "cables-open-wire.downlead",
    "connectors.downlead",
    "devices.downlead",
    "rules-au.downlead",
    "rules-ca.downlead",
    "rules-cept.downlead",
    "rules-de.downlead",
    "rules-exposure.downlead",
    "rules-itu.downlead",
    "rules-uk.downlead",
    "rules-us.downlead",
];

/// The file of that name.
#[must_use]
pub fn file(name: &str) -> Option<&'static LibraryFile> {
    FILES.iter().find(|f| f.name == name)
}
