//! Standard input as a text, for the commands that take a file.

use std::io::Read;

use crate::loader::{LARGEST, in_words, plain_io};
use crate::model::LoadError;

/// What names it on the command line.
pub(crate) const DASH: &str = "-";

/// All of it.
///
/// # Errors
/// Why it cannot be used, to follow "standard input: ".
pub(crate) fn text() -> Result<String, String> {
    let mut bytes = Vec::new();
    std::io::stdin()
        .lock()
        .take(LARGEST + 1)
        .read_to_end(&mut bytes)
        .map_err(|e| plain_io(&e))?;
    if bytes.len() as u64 > LARGEST {
        return Err(in_words(&LoadError::TooLarge));
    }
    String::from_utf8(bytes).map_err(|e| {
        in_words(&LoadError::NotUtf8 {
            offset: e.utf8_error().valid_up_to(),
        })
    })
}
