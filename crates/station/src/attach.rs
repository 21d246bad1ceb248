//! Files that are no `.downlead` files and whose contents take part: readings and networks.

mod certificate;
mod columns;
mod profile;
mod readings;
mod records;
mod wide;
mod workbook;

use downlead_base::Loc;
use rustc_hash::FxHasher;
use std::hash::{Hash, Hasher};
use std::sync::Arc;

use downlead_touchstone::{Network, Touchstone, ports_from_name};

use crate::scope::{LoadError, Loader};

pub use certificate::{Certificate, CertificatePoint, CertificateProblem, Corrected};
pub use columns::{COLUMNS, Column};
pub use profile::{ProfileFile, ProfileProblem, ProfileTrouble};
pub use readings::{Cell, Problem, ReadingsFile, Row};
pub use workbook::text_of;

/// What such a file holds.
#[derive(Debug)]
pub enum Content {
    /// Rows of readings.
    Readings(ReadingsFile),
    /// Ground along a path.
    Profile(ProfileFile),
    /// Corrections of a power meter.
    Certificate(Certificate),
    /// Scattering parameters, with what was found wrong in them.
    Network(Box<Touchstone>),
}

/// Such a file, read.
#[derive(Debug)]
pub struct Attachment {
    /// Path below the root.
    pub path: Box<str>,
    /// Its contents, or why they could not be had.
    pub content: Result<Content, LoadError>,
    /// Fingerprint of the text: results that took it stay valid until it changes.
    pub stamp: u64,
}

/// Whether a path is that of a network file.
#[must_use]
pub fn is_network(path: &str) -> bool {
    ports_from_name(path).is_some()
        || path
            .rsplit_once('.')
            .is_some_and(|(_, e)| e.eq_ignore_ascii_case("ts"))
}

impl Attachment {
    /// Reads a file by what its name says it is.
    #[must_use]
    pub fn load(path: &str, loader: &dyn Loader) -> Attachment {
        match loader.read(path) {
            Ok(text) => Attachment::of(path, &text),
            Err(e) => Attachment {
                path: path.into(),
                stamp: print(&e.to_string()),
                content: Err(e),
            },
        }
    }

    /// A file of this text.
    #[must_use]
    pub fn of(path: &str, text: &str) -> Attachment {
        let content = if is_network(path) {
            let ports = ports_from_name(path);
            Content::Network(Box::new(downlead_touchstone::read(text.as_bytes(), ports)))
        } else if let Some(p) = ProfileFile::parse(text) {
            Content::Profile(p)
        } else if let Some(c) = Certificate::parse(path, text) {
            Content::Certificate(c)
        } else {
            Content::Readings(ReadingsFile::parse(text))
        };
        Attachment {
            path: path.into(),
            content: Ok(content),
            stamp: print(text),
        }
    }

    /// The rows, if it holds readings.
    #[must_use]
    pub fn readings(&self) -> Option<&ReadingsFile> {
        match &self.content {
            Ok(Content::Readings(r)) => Some(r),
            _ => None,
        }
    }

    /// The profile, if it holds one.
    #[must_use]
    pub fn profile(&self) -> Option<&ProfileFile> {
        match &self.content {
            Ok(Content::Profile(p)) => Some(p),
            _ => None,
        }
    }

    /// The certificate, if it holds one.
    #[must_use]
    pub fn certificate(&self) -> Option<&Certificate> {
        match &self.content {
            Ok(Content::Certificate(c)) => Some(c),
            _ => None,
        }
    }

    /// The network, if it holds one.
    #[must_use]
    pub fn network(&self) -> Option<&Network> {
        match &self.content {
            Ok(Content::Network(t)) => t.network.as_ref(),
            _ => None,
        }
    }
}

fn print(text: &str) -> u64 {
    let mut h = FxHasher::default();
    text.hash(&mut h);
    h.finish()
}

/// The attachments of a scope by the place where their path stands.
#[derive(Default, Debug)]
pub struct Attachments {
    by_place: rustc_hash::FxHashMap<Loc, Arc<Attachment>>,
}

impl Attachments {
    /// Notes one.
    pub fn insert(&mut self, place: Loc, a: Arc<Attachment>) {
        self.by_place.insert(place, a);
    }

    /// The file whose path stands there.
    #[must_use]
    pub fn at(&self, place: Loc) -> Option<&Arc<Attachment>> {
        self.by_place.get(&place)
    }

    /// Fingerprint of all files and their contents, whatever their order.
    #[must_use]
    pub fn fingerprint(&self) -> u64 {
        self.by_place.values().fold(0, |sum: u64, a| {
            let mut h = FxHasher::default();
            (&a.path, a.stamp).hash(&mut h);
            sum.wrapping_add(h.finish())
        })
    }

    /// Fingerprint of the file of that path; 0 if there is none.
    #[must_use]
    pub fn stamp(&self, path: &str) -> u64 {
        self.by_place
            .values()
            .find(|a| &*a.path == path)
            .map_or(0, |a| a.stamp)
    }
}
