//! Files and names: what a file can see.

use std::sync::{Arc, OnceLock};

use downlead_base::{Diagnostic, ItemId, Loc, codes};
use downlead_quantity::{Quantity, Shape};
use downlead_syntax::{File, Item};
use rustc_hash::{FxHashMap, FxHasher};
use std::hash::{Hash, Hasher};

use crate::cx::{Lets, Val};
use crate::forms::NameKind;
use crate::lower::{Lowered, lower, lower_let};
use crate::model::{Band, Cable, Connector, DeviceClass, Instrument, Meaning, Name, RuleSet};

/// Why a file could not be had.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LoadError {
    /// There is none of that name.
    NotFound,
    /// It is a folder.
    IsDirectory,
    /// A byte that is not UTF-8.
    NotUtf8 {
        /// Where, in bytes from 0.
        offset: usize,
        /// The same as a line from 1.
        line: usize,
        /// What it is in the encoding it looks like.
        looks: Box<str>,
    },
    /// More than the tools read.
    TooLarge,
    /// Outside the root.
    OutsideRoot,
    /// Anything else, in words.
    Unreadable(String),
}

impl LoadError {
    /// The error of bytes that are no UTF-8; none if they are.
    #[must_use]
    pub fn not_utf8(bytes: &[u8]) -> Option<LoadError> {
        let offset = std::str::from_utf8(bytes).err()?.valid_up_to();
        let line = 1 + bytes[..offset].iter().filter(|b| **b == b'\n').count();
        let looks = match bytes {
            [0xff, 0xfe, ..] | [0xfe, 0xff, ..] => "which looks like UTF-16".to_owned(),
            _ => {
                let byte = bytes.get(offset).copied().unwrap_or(0);
                match char::from(byte) {
                    c if c.is_alphanumeric() => {
                        format!("byte 0x{byte:02X}, which is `{c}` in Latin-1")
                    }
                    _ => format!("byte 0x{byte:02X}"),
                }
            }
        };
        Some(LoadError::NotUtf8 {
            offset,
            line,
            looks: looks.into(),
        })
    }
}

impl std::fmt::Display for LoadError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            LoadError::NotFound => f.write_str("there is no such file"),
            LoadError::IsDirectory => f.write_str("it is a folder"),
            LoadError::NotUtf8 { line, looks, .. } => {
                write!(
                    f,
                    "it is not UTF-8 text (line {line}, {looks}): save it as UTF-8"
                )
            }
            LoadError::TooLarge => f.write_str("it is too large"),
            LoadError::OutsideRoot => f.write_str("it lies outside the root folder"),
            LoadError::Unreadable(why) => write!(f, "it cannot be read: {why}"),
        }
    }
}

/// Where texts come from: a folder, an editor's buffers, a test's table.
pub trait Loader {
    /// The text at a path relative to the root, `/`-separated, normalised.
    ///
    /// # Errors
    /// [`LoadError`] when it cannot be had.
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError>;

    /// Names of the files in the folder of a path, for a name that is nearly right. Empty where they
    /// cannot be listed.
    fn beside(&self, path: &str) -> Vec<String> {
        let _ = path;
        Vec::new()
    }

    /// The root folder in words for people, where there is one.
    fn root(&self) -> Option<String> {
        None
    }
}

/// The path that `relative` means when it stands in the file `base`; none if it climbs above
/// the root.
#[must_use]
pub fn normalise(base: &str, relative: &str) -> Option<String> {
    let mut parts: Vec<&str> = base.split('/').collect();
    parts.pop();
    if relative.starts_with('/') || relative.contains('\\') || relative.contains(':') {
        return None;
    }
    for p in relative.split('/') {
        match p {
            "" | "." => {}
            ".." => {
                parts.pop()?;
            }
            p => parts.push(p),
        }
    }
    Some(parts.join("/"))
}

/// The built-in library, parsed and lowered once.
pub struct Library {
    /// File name and parsed text.
    pub files: Vec<(&'static str, File)>,
    /// Lowered items with their file.
    pub items: Vec<(usize, Arc<Item>, Lowered)>,
    cables: FxHashMap<Box<str>, usize>,
    connectors: FxHashMap<Box<str>, usize>,
    devices: FxHashMap<Box<str>, usize>,
    rules: FxHashMap<Box<str>, usize>,
}

/// The built-in library.
pub fn library() -> &'static Library {
    static LIB: OnceLock<Library> = OnceLock::new();
    LIB.get_or_init(|| {
        let lets = Lets::default();
        let mut lib = Library {
            files: Vec::new(),
            items: Vec::new(),
            cables: FxHashMap::default(),
            connectors: FxHashMap::default(),
            devices: FxHashMap::default(),
            rules: FxHashMap::default(),
        };
        for f in downlead_catalogue::FILES {
            let file = File::parse(f.text);
            for placed in file.items() {
                let low = lower(&placed.item, &lets, true);
                let at = lib.items.len();
                match &low.meaning {
                    Meaning::Cable(c) => {
                        lib.cables.insert(c.name.text.clone(), at);
                    }
                    Meaning::Connector(c) => {
                        lib.connectors.insert(c.name.text.clone(), at);
                    }
                    Meaning::Device(c) => {
                        lib.devices.insert(c.name.text.clone(), at);
                    }
                    Meaning::Rules(c) => {
                        lib.rules.insert(c.name.text.clone(), at);
                    }
                    _ => continue,
                }
                lib.items.push((lib.files.len(), placed.item.clone(), low));
            }
            lib.files.push((f.name, file));
        }
        lib
    })
}

impl Library {
    /// A cable by name.
    #[must_use]
    pub fn cable(&self, name: &str) -> Option<&Cable> {
        match &self.items[*self.cables.get(name)?].2.meaning {
            Meaning::Cable(c) => Some(c),
            _ => None,
        }
    }

    /// The text of a cable's definition.
    #[must_use]
    pub fn cable_text(&self, name: &str) -> Option<&str> {
        let (_, item, _) = &self.items[*self.cables.get(name)?];
        let end = item.statement()?.span().end;
        Some(item.slice(downlead_base::Span::new(0, end)))
    }

    /// A connector by name.
    #[must_use]
    pub fn connector(&self, name: &str) -> Option<&Connector> {
        match &self.items[*self.connectors.get(name)?].2.meaning {
            Meaning::Connector(c) => Some(c),
            _ => None,
        }
    }

    /// A device definition by name.
    #[must_use]
    pub fn device(&self, name: &str) -> Option<&DeviceClass> {
        match &self.items[*self.devices.get(name)?].2.meaning {
            Meaning::Device(c) => Some(c),
            _ => None,
        }
    }

    /// Rules by name.
    #[must_use]
    pub fn rules(&self, name: &str) -> Option<&RuleSet> {
        match &self.items[*self.rules.get(name)?].2.meaning {
            Meaning::Rules(c) => Some(c),
            _ => None,
        }
    }

    /// Names of all rules.
    pub fn rules_names(&self) -> impl Iterator<Item = &str> {
        self.rules.keys().map(AsRef::as_ref)
    }

    /// Names of all cables.
    pub fn cable_names(&self) -> impl Iterator<Item = &str> {
        self.cables.keys().map(AsRef::as_ref)
    }

    /// Names of all connectors and adapters.
    pub fn connector_names(&self) -> impl Iterator<Item = &str> {
        self.connectors.keys().map(AsRef::as_ref)
    }

    /// Names of all device definitions.
    pub fn device_names(&self) -> impl Iterator<Item = &str> {
        self.devices.keys().map(AsRef::as_ref)
    }
}

/// Lowered items by identity, kept from one version of the text to the next.
#[derive(Default)]
pub struct LowerCache {
    map: FxHashMap<ItemId, Vec<(u64, Arc<Lowered>)>>,
    /// Fingerprints of the named values behind the keys seen of late, newest last.
    prints: Vec<(u64, LetPrints)>,
    /// Names whose values differ between two keys.
    changed: FxHashMap<(u64, u64), Vec<Box<str>>>,
    stamp: u64,
}

type LetPrints = FxHashMap<Box<str>, u64>;

/// An item is seen by few scopes, each with its own named values.
const SCOPES_KEPT: usize = 4;

impl LowerCache {
    /// The lowered item, from the cache or made now.
    ///
    /// Named values reach an item through its text only, so an item without the names that
    /// changed stays as it was.
    pub fn get(&mut self, item: &Item, lets: &Lets, lets_key: u64) -> Arc<Lowered> {
        let kept = self.map.entry(item.id).or_default();
        if let Some((_, low)) = kept.iter().find(|e| e.0 == lets_key) {
            return Arc::clone(low);
        }
        let mut found = None;
        for (i, (key, low)) in kept.iter().enumerate() {
            let changed = self.changed.entry((*key, lets_key)).or_insert_with(|| {
                let of = |k: u64| self.prints.iter().find(|p| p.0 == k).map(|p| &p.1);
                match (of(*key), of(lets_key)) {
                    (Some(a), Some(b)) => a
                        .keys()
                        .chain(b.keys())
                        .filter(|n| a.get(*n) != b.get(*n))
                        .cloned()
                        .collect(),
                    // nothing is known of that version: the empty name is in every text
                    _ => vec!["".into()],
                }
            });
            // what was proposed for an unknown name depends on all names
            let proposes = low
                .diagnostics
                .iter()
                .any(|d| std::ptr::eq(d.code, &raw const codes::UNKNOWN_NAME));
            if !proposes && !changed.iter().any(|n| item.text().contains(&**n)) {
                found = Some(i);
                break;
            }
        }
        if let Some(i) = found {
            kept[i].0 = lets_key;
            return Arc::clone(&kept[i].1);
        }
        self.stamp += 1;
        let low = Arc::new(Lowered {
            stamp: self.stamp,
            ..lower(item, lets, false)
        });
        if kept.len() == SCOPES_KEPT {
            kept.remove(0);
        }
        // most items are seen by one scope
        kept.reserve_exact(1);
        kept.push((lets_key, Arc::clone(&low)));
        low
    }

    /// Notes the named values behind a key.
    fn note(&mut self, lets_key: u64, prints: LetPrints) {
        if let Some(i) = self.prints.iter().position(|p| p.0 == lets_key) {
            let newest = self.prints.remove(i);
            self.prints.push(newest);
            return;
        }
        if self.prints.len() == 16 {
            self.prints.remove(0);
            self.changed.clear();
        }
        self.prints.push((lets_key, prints));
    }

    /// Forgets items that are no longer there, once they are a sixteenth of those that are.
    pub fn sweep(&mut self, alive: &dyn Fn(ItemId) -> bool, count: usize) {
        if self.map.len() > count + count / 16 + 8 {
            self.map.retain(|k, _| alive(*k));
        }
    }

    /// How many items are kept.
    #[must_use]
    pub fn len(&self) -> usize {
        self.map.len()
    }

    /// Whether none is kept.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.map.is_empty()
    }
}

/// What a result can rest on, for [`Env::identity`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum RestsOn {
    /// What the name of a definition stands for.
    Name(NameKind),
    /// The contents of another file.
    File,
    /// Which stations say that they are on the site of one, and what they say.
    Beside,
}

/// The names of other definitions that a definition uses.
type Uses = Box<[(NameKind, Box<str>)]>;

/// What a file can see: its own definitions, those of the files it uses, and the library.
#[derive(Default)]
pub struct Env {
    /// Named values.
    pub lets: Lets,
    /// Fingerprint of the named values: lowered items depend on it.
    pub lets_key: u64,
    /// Definitions by name.
    pub bands: FxHashMap<Box<str>, Arc<Lowered>>,
    /// Cables of the files.
    pub cables: FxHashMap<Box<str>, (ItemId, Arc<Lowered>)>,
    /// Connectors of the files.
    pub connectors: FxHashMap<Box<str>, (ItemId, Arc<Lowered>)>,
    /// Device definitions of the files.
    pub devices: FxHashMap<Box<str>, (ItemId, Arc<Lowered>)>,
    /// Instruments.
    pub instruments: FxHashMap<Box<str>, (ItemId, Arc<Lowered>)>,
    /// Licences and rules of the files.
    pub rules: FxHashMap<Box<str>, (ItemId, Arc<Lowered>)>,
    /// Stations of the files.
    pub stations: FxHashMap<Box<str>, (ItemId, Arc<Lowered>)>,
    /// The stations that say they are beside one, by its name, in the order of their names.
    beside: FxHashMap<Box<str>, Vec<Box<str>>>,
    /// The items of these stations, for their variants.
    bases: FxHashMap<Box<str>, Arc<Item>>,
    /// Other files whose contents take part.
    pub attachments: crate::attach::Attachments,
    /// Fingerprints of the names of each kind.
    names: FxHashMap<NameKind, u64>,
    /// Names that the files' device definitions use.
    uses: FxHashMap<Box<str>, Uses>,
    /// Names that the files' licences and rules use.
    rule_uses: FxHashMap<Box<str>, Uses>,
    /// Names that the files' stations use.
    station_uses: FxHashMap<Box<str>, Uses>,
    /// Names whose definition could not be understood: that is said there, not at each use.
    broken: FxHashMap<Box<str>, ItemId>,
}

/// Where each name of a kind is defined first.
#[derive(Default)]
struct Firsts(FxHashMap<NameKind, FxHashMap<Box<str>, Loc>>);

impl Firsts {
    /// Notes a definition. False if the name is taken, which is reported.
    fn see(&mut self, kind: NameKind, name: &Name, out: &mut Vec<Diagnostic>) -> bool {
        let first = self.0.entry(kind).or_default();
        if let Some(first) = first.get(&name.text) {
            out.push(
                Diagnostic::new(
                    &codes::DUPLICATE_NAME,
                    name.loc,
                    format!("`{}` is the name of two things.", name.text),
                )
                .at("again here")
                .also(*first, "first here")
                .help("Rename one of them."),
            );
            return false;
        }
        first.insert(name.text.clone(), name.loc);
        true
    }
}

/// The kind of name that an item defines for all files; named values apart.
fn defined_kind(item: &Item) -> Option<NameKind> {
    match keyword_of(item)? {
        "band" => Some(NameKind::Band),
        "cable" => Some(NameKind::Cable),
        "connector" => Some(NameKind::Connector),
        "device" => Some(NameKind::Device),
        "instrument" => Some(NameKind::Instrument),
        "licence" | "rules" => Some(NameKind::Rules),
        "station" => Some(NameKind::Station),
        _ => None,
    }
}

/// The name of a definition that could be understood.
fn defined_name(meaning: &Meaning) -> Option<&Name> {
    match meaning {
        Meaning::Band(b) => Some(&b.name),
        Meaning::Cable(c) => Some(&c.name),
        Meaning::Connector(c) => Some(&c.name),
        Meaning::Device(c) => Some(&c.name),
        Meaning::Instrument(c) => Some(&c.name),
        Meaning::Rules(c) => Some(&c.name),
        Meaning::Station(s) => Some(&s.name),
        _ => None,
    }
}

impl Env {
    /// Gathers the definitions of some files, in order; problems across items go to `out`.
    pub fn gather(files: &[&File], cache: &mut LowerCache, out: &mut Vec<Diagnostic>) -> Env {
        let mut env = Env::default();
        let mut first = Firsts::default();
        env.gather_lets(files, cache, &mut first, out);
        for p in files.iter().flat_map(|f| f.items()) {
            let Some(kind) = defined_kind(&p.item) else {
                continue;
            };
            let low = cache.get(&p.item, &env.lets, env.lets_key);
            let Some(name) = defined_name(&low.meaning).cloned() else {
                if let Some(s) = p.item.statement()
                    && let Some(a) = s.atoms().get(1)
                {
                    env.broken.insert(s.text(*a).into(), p.item.id);
                }
                continue;
            };
            // two stations of one name are reported where results are computed
            let new = match kind {
                NameKind::Station => !env.stations.contains_key(&name.text),
                _ => first.see(kind, &name, out),
            };
            if new {
                *env.names.entry(kind).or_default() ^= hash(&&*name.text);
                env.define(kind, name.text, &p.item, low);
            }
        }
        env.beside.values_mut().for_each(|names| names.sort());
        env
    }

    /// Gathers the named values, before everything else, in the order of the text: later ones may
    /// use earlier ones.
    fn gather_lets(
        &mut self,
        files: &[&File],
        cache: &mut LowerCache,
        first: &mut Firsts,
        out: &mut Vec<Diagnostic>,
    ) {
        for p in files.iter().flat_map(|f| f.items()) {
            if keyword_of(&p.item) == Some("let") {
                let (v, diags) = lower_let(&p.item, &self.lets);
                out.extend(diags);
                if let Some((name, v)) = v
                    && first.see(NameKind::Let, &name, out)
                {
                    self.lets.insert(name.text, v);
                }
            }
        }
        let prints: LetPrints = self
            .lets
            .iter()
            .map(|(n, v)| (n.clone(), fingerprint(v)))
            .collect();
        self.lets_key = prints.iter().fold(0, |k, (n, p)| k ^ hash(&(&**n, *p)));
        cache.note(self.lets_key, prints);
    }

    /// Keeps a definition under its name, and the names that it uses itself.
    fn define(&mut self, kind: NameKind, name: Box<str>, item: &Arc<Item>, low: Arc<Lowered>) {
        let id = item.id;
        let uses = || -> Uses {
            let used = low.names.iter();
            used.map(|m| (m.kind, item.slice(m.loc.span).into()))
                .collect()
        };
        match kind {
            NameKind::Band => drop(self.bands.insert(name, low)),
            NameKind::Cable => drop(self.cables.insert(name, (id, low))),
            NameKind::Connector => drop(self.connectors.insert(name, (id, low))),
            NameKind::Device => {
                self.uses.insert(name.clone(), uses());
                self.devices.insert(name, (id, low));
            }
            NameKind::Rules => {
                self.rule_uses.insert(name.clone(), uses());
                self.rules.insert(name, (id, low));
            }
            NameKind::Station => {
                self.station_uses.insert(name.clone(), uses());
                self.bases.insert(name.clone(), Arc::clone(item));
                if let Meaning::Station(st) = &low.meaning {
                    for b in &st.site.beside {
                        let naming = self.beside.entry(b.station.text.clone());
                        naming.or_default().push(name.clone());
                    }
                }
                self.stations.insert(name, (id, low));
            }
            _ => drop(self.instruments.insert(name, (id, low))),
        }
    }

    /// The item of a station and what that means.
    #[must_use]
    pub fn base(&self, station: &str) -> Option<(&Arc<Item>, &Arc<Lowered>)> {
        Some((self.bases.get(station)?, &self.stations.get(station)?.1))
    }

    /// Whether a licence or a set of rules has a line with an error, so that a clause of it may be
    /// missing.
    #[must_use]
    pub fn misreads_rules(&self, name: &str) -> bool {
        self.rules.get(name).is_some_and(|(_, low)| {
            low.diagnostics
                .iter()
                .any(|d| d.severity == downlead_base::Severity::Error)
        })
    }

    /// Whether there is a definition of that name that could not be understood.
    #[must_use]
    pub fn is_broken(&self, name: &str) -> bool {
        self.broken.contains_key(name)
    }

    /// A band by name.
    #[must_use]
    pub fn band(&self, name: &str) -> Option<&Band> {
        match &self.bands.get(name)?.meaning {
            Meaning::Band(b) => Some(b),
            _ => None,
        }
    }

    /// A cable by name, the files' own before the library's.
    #[must_use]
    pub fn cable(&self, name: &str) -> Option<&Cable> {
        match self.cables.get(name) {
            Some((_, low)) => match &low.meaning {
                Meaning::Cable(c) => Some(c),
                _ => None,
            },
            None => library().cable(name),
        }
    }

    /// A connector by name, the files' own before the library's.
    #[must_use]
    pub fn connector(&self, name: &str) -> Option<&Connector> {
        match self.connectors.get(name) {
            Some((_, low)) => match &low.meaning {
                Meaning::Connector(c) => Some(c),
                _ => None,
            },
            None => library().connector(name),
        }
    }

    /// A device definition by name, the files' own before the library's.
    #[must_use]
    pub fn device(&self, name: &str) -> Option<&DeviceClass> {
        match self.devices.get(name) {
            Some((_, low)) => match &low.meaning {
                Meaning::Device(c) => Some(c),
                _ => None,
            },
            None => library().device(name),
        }
    }

    /// An instrument by name.
    #[must_use]
    pub fn instrument(&self, name: &str) -> Option<&Instrument> {
        match &self.instruments.get(name)?.1.meaning {
            Meaning::Instrument(i) => Some(i),
            _ => None,
        }
    }

    /// A licence or rules by name, the files' own before the library's.
    #[must_use]
    pub fn rule_set(&self, name: &str) -> Option<&RuleSet> {
        match self.rules.get(name) {
            Some((_, low)) => match &low.meaning {
                Meaning::Rules(c) => Some(c),
                _ => None,
            },
            None => library().rules(name),
        }
    }

    /// A station of the files by name.
    #[must_use]
    pub fn station(&self, name: &str) -> Option<&crate::model::Station> {
        match &self.stations.get(name)?.1.meaning {
            Meaning::Station(s) => Some(s),
            _ => None,
        }
    }

    /// The stations on the site of one, as far as they are defined: those it names, in the order of
    /// its text, then those that name it.
    #[must_use]
    pub fn on_site_of(&self, st: &crate::model::Station) -> Vec<&crate::model::Station> {
        let named = st.site.beside.iter().map(|b| &b.station.text);
        let others = self.naming(&st.name.text).iter();
        let mut seen: Vec<&str> = vec![&st.name.text];
        named
            .chain(others)
            .filter(|n| {
                let new = !seen.contains(&&***n);
                seen.push(n);
                new
            })
            .filter_map(|n| self.station(n))
            .collect()
    }

    /// Names of the stations that say they are beside one.
    #[must_use]
    pub fn naming(&self, station: &str) -> &[Box<str>] {
        self.beside.get(station).map_or(&[], |n| n)
    }

    /// The other files whose contents a station of the files takes part of.
    #[must_use]
    pub fn station_files(&self, name: &str) -> &[Name] {
        self.stations.get(name).map_or(&[], |s| &s.1.files)
    }

    /// The names that a station of the files uses.
    #[must_use]
    pub fn used_by_station(&self, name: &str) -> &[(NameKind, Box<str>)] {
        self.station_uses.get(name).map_or(&[], |u| u)
    }

    /// The names that the files' own licence or rules use.
    #[must_use]
    pub fn used_by_rules(&self, name: &str) -> &[(NameKind, Box<str>)] {
        self.rule_uses.get(name).map_or(&[], |u| u)
    }

    /// The names that the files' own definition of a device uses.
    #[must_use]
    pub fn used_by_device(&self, name: &str) -> &[(NameKind, Box<str>)] {
        self.uses.get(name).map_or(&[], |u| u)
    }

    /// Whether the files or the library define a name; true for kinds that are not defined by name.
    #[must_use]
    pub fn defines(&self, kind: NameKind, name: &str) -> bool {
        match kind {
            NameKind::Band => self.band(name).is_some(),
            NameKind::Cable => self.cable(name).is_some(),
            NameKind::Connector => self.connector(name).is_some(),
            NameKind::Device => self.device(name).is_some(),
            NameKind::Instrument => self.instrument(name).is_some(),
            NameKind::Rules => self.rule_set(name).is_some(),
            NameKind::Station => self.stations.contains_key(name),
            NameKind::Family => self.families().any(|f| f == name),
            _ => true,
        }
    }

    /// The families of all connectors.
    fn families(&self) -> impl Iterator<Item = &str> {
        let own = self.connectors.values().map(|(_, low)| &low.meaning);
        let own = own.filter_map(|m| match m {
            Meaning::Connector(c) => c.families.as_ref(),
            _ => None,
        });
        let lib = library();
        own.chain(
            lib.connector_names()
                .filter_map(|n| lib.connector(n)?.families.as_ref()),
        )
        .flat_map(|f| [&*f.0, &*f.1])
    }

    /// The names of a kind that a text can use.
    #[must_use]
    pub fn names_of(&self, kind: NameKind) -> Vec<&str> {
        fn keys<V>(m: &FxHashMap<Box<str>, V>) -> impl Iterator<Item = &str> {
            m.keys().map(AsRef::as_ref)
        }
        let lib = library();
        match kind {
            NameKind::Band => keys(&self.bands).collect(),
            NameKind::Cable => keys(&self.cables).chain(lib.cable_names()).collect(),
            NameKind::Connector => keys(&self.connectors)
                .chain(lib.connector_names())
                .collect(),
            NameKind::Device => keys(&self.devices).chain(lib.device_names()).collect(),
            NameKind::Instrument => keys(&self.instruments).collect(),
            NameKind::Rules => keys(&self.rules).chain(lib.rules_names()).collect(),
            NameKind::Station => keys(&self.stations).collect(),
            NameKind::Family => self.families().collect(),
            _ => Vec::new(),
        }
    }

    /// Identity of what a result rests on. Results that took it stay valid until it changes: when
    /// the name means something else, when its definition says something else, and, for an unknown
    /// name, when there are other names to propose instead.
    #[must_use]
    pub fn identity(&self, on: RestsOn, name: &str) -> u64 {
        let kind = match on {
            RestsOn::Name(kind) => kind,
            RestsOn::File => return self.attachments.stamp(name),
            RestsOn::Beside => {
                let stamp = |n: &str| self.stations.get(n).map(|s| s.1.stamp);
                let all = self.naming(name).iter();
                return all.fold(0, |h, n| h ^ hash(&(&**n, stamp(n))));
            }
        };
        if kind == NameKind::Family {
            let known = self.families().fold(0, |h, f| h ^ hash(&f));
            return if self.defines(kind, name) {
                0
            } else {
                known | 1
            };
        }
        let own = |m: &FxHashMap<Box<str>, (ItemId, Arc<Lowered>)>| m.get(name).map(|x| x.1.stamp);
        let (own, built_in) = match kind {
            NameKind::Band => (self.bands.get(name).map(|b| b.stamp), false),
            NameKind::Cable => (own(&self.cables), library().cable(name).is_some()),
            NameKind::Connector => {
                let built_in = library().connector(name).is_some();
                (own(&self.connectors), built_in)
            }
            NameKind::Device => (own(&self.devices), library().device(name).is_some()),
            NameKind::Rules => (own(&self.rules), library().rules(name).is_some()),
            NameKind::Station => (own(&self.stations), false),
            _ => (own(&self.instruments), false),
        };
        match own {
            Some(stamp) => stamp << 1,
            None if built_in => 0,
            None => {
                let broken = if self.is_broken(name) {
                    hash(&"broken")
                } else {
                    0
                };
                (self.names.get(&kind).copied().unwrap_or(0) ^ broken) | 1
            }
        }
    }
}

/// First word of an item.
#[must_use]
pub fn keyword_of(item: &Item) -> Option<&str> {
    item.statement()?.keyword()
}

fn hash(of: &impl Hash) -> u64 {
    let mut h = FxHasher::default();
    of.hash(&mut h);
    h.finish()
}

/// Of all that an item may take from a named value.
fn fingerprint(v: &Val) -> u64 {
    let quantity = |q: &Quantity| (q.value.to_bits(), q.dim as u8);
    let half = v.half.as_ref().map(|(q, shape)| {
        let k = match shape {
            Shape::Rectangular => None,
            Shape::Coverage(k) => Some(k.to_bits()),
        };
        (quantity(q), k)
    });
    hash(&(
        quantity(&v.q),
        half,
        v.upper.as_ref().map(quantity),
        v.imperial,
        v.per,
        v.coverage.map(f64::to_bits),
    ))
}
