//! Lists that are mostly empty.

use std::ops::Deref;

/// A list as wide as one pointer: most lists of figures are empty, and parts are many.
#[derive(Clone, PartialEq)]
pub struct List<T>(Option<Box<Box<[T]>>>);

impl<T> List<T> {
    /// What is in it.
    #[must_use]
    pub fn into_vec(self) -> Vec<T> {
        self.0.map_or(Vec::new(), |l| l.into_vec())
    }
}

impl<T> Default for List<T> {
    fn default() -> Self {
        List(None)
    }
}

impl<T> Deref for List<T> {
    type Target = [T];

    fn deref(&self) -> &[T] {
        self.0.as_deref().map_or(&[], |x| x)
    }
}

impl<T> From<Vec<T>> for List<T> {
    fn from(v: Vec<T>) -> Self {
        List((!v.is_empty()).then(|| Box::new(v.into())))
    }
}

impl<T> FromIterator<T> for List<T> {
    fn from_iter<I: IntoIterator<Item = T>>(of: I) -> Self {
        Vec::from_iter(of).into()
    }
}

impl<'l, T> IntoIterator for &'l List<T> {
    type Item = &'l T;
    type IntoIter = std::slice::Iter<'l, T>;

    fn into_iter(self) -> Self::IntoIter {
        self.iter()
    }
}

impl<T: std::fmt::Debug> std::fmt::Debug for List<T> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        (**self).fmt(f)
    }
}
