//! Words in messages: capitals, and the name that was meant.

/// First letter in upper case.
#[must_use]
pub fn capital(s: &str) -> String {
    let mut c = s.chars();
    c.next().map_or_else(String::new, |f| {
        f.to_uppercase().collect::<String>() + c.as_str()
    })
}

/// The nearest of some names, if it is near enough to be meant.
pub fn nearest<'n>(name: &str, all: impl Iterator<Item = &'n str>) -> Option<&'n str> {
    let lower = name.to_lowercase();
    all.filter(|n| !n.is_empty())
        .map(|n| {
            let l = n.to_lowercase();
            // a name that starts alike is meant more often than one of equal edit distance
            let bonus = if l.starts_with(&lower) || lower.starts_with(&l) {
                0.15
            } else {
                0.0
            };
            (
                strsim::normalized_damerau_levenshtein(&lower, &l) + bonus,
                n,
            )
        })
        .filter(|(score, _)| *score >= 0.6)
        .max_by(|a, b| a.0.total_cmp(&b.0).then_with(|| b.1.cmp(a.1)))
        .map(|(_, n)| n)
}
