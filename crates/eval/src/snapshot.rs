//! A set of files with everything computed from them, and how an edit changes it.

use std::sync::Arc;

use downlead_base::{Diagnostic, ItemId, Loc, Span, codes};
use downlead_station::model::{Direction, Meaning, Station};
use downlead_station::{
    Attachment, Attachments, Env, LoadError, Loader, LowerCache, Lowered, keyword_of, library,
    normalise,
};
use downlead_syntax::{File, Item};
use rustc_hash::{FxHashMap, FxHashSet};

use crate::chain::{self, Cx};
use crate::checks;
use crate::history::Recorded;
use crate::network;
use crate::point::{points, unknown_band};
use crate::result::{ChainResult, ItemResult};
use crate::verdict::unknown_instrument;
use crate::walk;

/// A file of the set.
pub struct FileEntry {
    /// Path relative to the root.
    pub path: String,
    /// Text and tree; empty if it could not be read.
    pub tree: File,
    /// Why it could not be read.
    pub error: Option<LoadError>,
    /// Whether it was named, rather than used by another.
    pub root: bool,
    /// Files it uses, by index, with the place of the statement.
    pub(crate) uses: Vec<(usize, Loc)>,
}

impl FileEntry {
    /// Its text.
    #[must_use]
    pub fn text(&self) -> &str {
        self.tree.text()
    }
}

/// One scope: a named file and all it uses.
pub struct Scope {
    pub(crate) file: usize,
    pub(crate) env: Arc<Env>,
    pub(crate) items: Vec<Evaluated>,
    /// Items of files that are only used and have no scope of their own.
    used: Vec<Arc<Lowered>>,
    pub(crate) diagnostics: Vec<Diagnostic>,
}

/// An item with its meaning and what was computed from it.
pub type Evaluated = (Arc<Item>, Arc<Lowered>, Arc<ItemResult>);

impl Scope {
    /// Index of the named file.
    #[must_use]
    pub fn file(&self) -> usize {
        self.file
    }

    /// What the file can see.
    #[must_use]
    pub fn env(&self) -> &Env {
        &self.env
    }

    /// Its items in the order of the text.
    #[must_use]
    pub fn items(&self) -> &[Evaluated] {
        &self.items
    }
}

/// Results kept from one version to the next.
#[derive(Default)]
pub(crate) struct Cache {
    lower: LowerCache,
    /// With the lowering they were computed from.
    results: FxHashMap<(ItemId, usize), (u64, Arc<ItemResult>)>,
    /// Files of readings and networks by path.
    attached: FxHashMap<String, Arc<Attachment>>,
}

/// A set of files with everything computed from them.
pub struct Snapshot {
    pub(crate) files: Vec<FileEntry>,
    pub(crate) scopes: Vec<Scope>,
    pub(crate) load_diagnostics: Vec<Diagnostic>,
    /// Trees of the last version while files are followed anew.
    known: FxHashMap<String, File>,
    cache: Cache,
    /// Readings of files as they were first recorded, by path.
    pub(crate) recorded: FxHashMap<String, Arc<Recorded>>,
    /// Whether the last change was stopped before all was computed.
    unfinished: bool,
}

/// Never stops.
const ON: &dyn Fn() -> bool = &|| false;

/// Files nested deeper than this by `use` are refused.
const MAX_USE_DEPTH: usize = 64;

impl Snapshot {
    /// Loads the named files and all they use, and computes everything.
    pub fn load(roots: &[String], loader: &dyn Loader) -> Snapshot {
        let mut s = Snapshot {
            files: Vec::new(),
            scopes: Vec::new(),
            load_diagnostics: Vec::new(),
            known: FxHashMap::default(),
            cache: Cache::default(),
            recorded: FxHashMap::default(),
            unfinished: false,
        };
        for r in roots {
            let path = normalise("", r).unwrap_or_else(|| r.clone());
            if let Some(i) = s.files.iter().position(|f| f.path == path) {
                s.files[i].root = true;
                continue;
            }
            s.open(&path, loader, true, 0);
        }
        s.cycles();
        s.compute(loader, ON);
        s
    }

    fn open(&mut self, path: &str, loader: &dyn Loader, root: bool, depth: usize) -> usize {
        let (tree, error) = match loader.read(path) {
            Ok(text) => (File::parse(text), None),
            Err(e) => (File::parse(""), Some(e)),
        };
        self.add(path, tree, error, root, loader, depth)
    }

    fn add(
        &mut self,
        path: &str,
        tree: File,
        error: Option<LoadError>,
        root: bool,
        loader: &dyn Loader,
        depth: usize,
    ) -> usize {
        let at = self.files.len();
        self.files.push(FileEntry {
            path: path.to_owned(),
            tree,
            error,
            root,
            uses: Vec::new(),
        });
        self.follow(at, loader, depth);
        at
    }

    /// Opens what a file uses.
    fn follow(&mut self, at: usize, loader: &dyn Loader, depth: usize) {
        let items: Vec<Arc<Item>> = self.files[at]
            .tree
            .items()
            .iter()
            .filter(|p| keyword_of(&p.item) == Some("use"))
            .map(|p| Arc::clone(&p.item))
            .collect();
        for item in items {
            let low = self
                .cache
                .lower
                .get(&item, &downlead_station::Lets::default(), 0);
            let Meaning::Use(name) = &low.meaning else {
                continue;
            };
            let base = self.files[at].path.clone();
            let Some(path) = normalise(&base, &name.text) else {
                self.load_diagnostics.push(
                    Diagnostic::new(&codes::USE_OUTSIDE_ROOT, name.loc, format!("`{}` lies outside the project's root.", name.text))
                        .at("climbs out")
                        .help("A file may use only what lies below the root: a path with `/`, relative to this file."),
                );
                continue;
            };
            if let Some(d) = network::used(name) {
                self.load_diagnostics.push(d);
                continue;
            }
            if let Some(i) = self.files.iter().position(|f| f.path == path) {
                self.files[at].uses.push((i, name.loc));
                continue;
            }
            if depth >= MAX_USE_DEPTH {
                self.load_diagnostics.push(
                    Diagnostic::new(
                        &codes::USE_CYCLE,
                        name.loc,
                        format!("More than {MAX_USE_DEPTH} files use each other in a row."),
                    )
                    .at("too deep"),
                );
                continue;
            }
            if let Some(tree) = self.known.get(&path).cloned() {
                // the same tree: identities of its items must not change
                let i = self.add(&path, tree, None, false, loader, depth + 1);
                self.files[at].uses.push((i, name.loc));
                continue;
            }
            match loader.read(&path) {
                Err(LoadError::OutsideRoot) => self.load_diagnostics.push(
                    Diagnostic::new(
                        &codes::USE_OUTSIDE_ROOT,
                        name.loc,
                        format!("`{}` lies outside the project's root.", name.text),
                    )
                    .at("leads out"),
                ),
                Err(e) => {
                    let mut d = Diagnostic::new(
                        &codes::USE_NOT_FOUND,
                        name.loc,
                        format!("`{}` cannot be used: {e}.", name.text),
                    )
                    .at("not read");
                    if e == LoadError::NotFound {
                        d = d.help(format!(
                            "Looked for `{path}` below the root. The path is relative to this file."
                        ));
                    }
                    self.load_diagnostics.push(d);
                }
                Ok(text) => {
                    let i = self.add(&path, File::parse(text), None, false, loader, depth + 1);
                    self.files[at].uses.push((i, name.loc));
                }
            }
        }
    }

    /// Reports circles of `use`.
    fn cycles(&mut self) {
        let n = self.files.len();
        let mut state = vec![0u8; n];
        let mut found = Vec::new();
        for start in 0..n {
            if state[start] == 0 {
                self.visit(start, &mut state, &mut Vec::new(), &mut found);
            }
        }
        self.load_diagnostics.extend(found);
    }

    fn visit(&self, at: usize, state: &mut [u8], path: &mut Vec<usize>, out: &mut Vec<Diagnostic>) {
        state[at] = 1;
        path.push(at);
        for (next, loc) in &self.files[at].uses {
            match state[*next] {
                0 => self.visit(*next, state, path, out),
                1 => {
                    let from = path.iter().position(|p| p == next).unwrap_or(0);
                    let ring: Vec<&str> = path[from..]
                        .iter()
                        .chain([next])
                        .map(|i| self.files[*i].path.as_str())
                        .collect();
                    out.push(
                        Diagnostic::new(
                            &codes::USE_CYCLE,
                            *loc,
                            format!(
                                "These files use each other in a circle: {}.",
                                ring.join(" → ")
                            ),
                        )
                        .at("closes the circle")
                        .help("Move what both need into a third file."),
                    );
                }
                _ => {}
            }
        }
        path.pop();
        state[at] = 2;
    }

    /// Replaces a range of a file's text. Only what the edit touches is computed anew.
    /// `loader` is asked for files that are used for the first time.
    pub fn edit(&mut self, file: usize, range: Span, text: &str, loader: &dyn Loader) {
        self.edit_until(file, range, text, loader, ON);
    }

    /// The same, unless `stop` says so, which is asked before each item that is computed. Whether
    /// all is computed; if not, the texts are the new ones and the results those of before, and
    /// [`Snapshot::finish`] or the next edit goes on. What was computed until then is kept.
    pub fn edit_until(
        &mut self,
        file: usize,
        range: Span,
        text: &str,
        loader: &dyn Loader,
        stop: &dyn Fn() -> bool,
    ) -> bool {
        self.edit_all_until(file, &[(range, text)], loader, stop)
    }

    /// The same with several replacements, each of the text that those before it left. What lies
    /// between them is not touched.
    pub fn edit_all_until(
        &mut self,
        file: usize,
        edits: &[(Span, &str)],
        loader: &dyn Loader,
        stop: &dyn Fn() -> bool,
    ) -> bool {
        let Some(entry) = self.files.get_mut(file) else {
            return !self.unfinished;
        };
        let before: Vec<ItemId> = uses_of(&entry.tree);
        for (range, text) in edits {
            entry.tree = entry.tree.edit(*range, text);
        }
        entry.error = None;
        if uses_of(&entry.tree) != before {
            self.reload(loader, stop);
        } else {
            self.compute(loader, stop);
        }
        !self.unfinished
    }

    /// Computes what a stopped edit left. Whether all is computed.
    pub fn finish(&mut self, loader: &dyn Loader, stop: &dyn Fn() -> bool) -> bool {
        if self.unfinished {
            self.compute(loader, stop);
        }
        !self.unfinished
    }

    /// Follows all `use` statements anew.
    fn reload(&mut self, loader: &dyn Loader, stop: &dyn Fn() -> bool) {
        self.load_diagnostics.clear();
        let old = std::mem::take(&mut self.files);
        self.known = old
            .iter()
            .filter(|f| f.error.is_none())
            .map(|f| (f.path.clone(), f.tree.clone()))
            .collect();
        for f in old.iter().filter(|f| f.root) {
            if let Some(i) = self.files.iter().position(|g| g.path == f.path) {
                self.files[i].root = true;
                continue;
            }
            self.add(&f.path, f.tree.clone(), f.error.clone(), true, loader, 0);
        }
        self.known.clear();
        self.cycles();
        self.compute(loader, stop);
    }

    /// The files a file sees, itself last, each once.
    fn visible(&self, file: usize) -> Vec<usize> {
        let mut order = Vec::new();
        let mut seen = FxHashSet::default();
        self.collect(file, &mut seen, &mut order);
        order
    }

    fn collect(&self, at: usize, seen: &mut FxHashSet<usize>, order: &mut Vec<usize>) {
        if !seen.insert(at) {
            return;
        }
        for (u, _) in &self.files[at].uses {
            self.collect(*u, seen, order);
        }
        order.push(at);
    }

    /// Paths of the files of readings and networks that take part.
    pub fn attachments(&self) -> impl Iterator<Item = &str> {
        self.cache.attached.keys().map(String::as_str)
    }

    /// Takes another file's contents anew, which have changed. False if they take no part.
    pub fn refresh_attachment(&mut self, path: &str, loader: &dyn Loader) -> bool {
        if self.cache.attached.remove(path).is_none() {
            return false;
        }
        self.compute(loader, ON);
        true
    }

    /// Reads the files of readings and networks that the items of a file name. Those that are
    /// read already are kept.
    fn attach(
        &mut self,
        file: usize,
        lowered: &[(Arc<Item>, Arc<Lowered>)],
        loader: &dyn Loader,
        to: &mut Attachments,
        out: &mut Vec<Diagnostic>,
    ) {
        for (_, low) in lowered {
            for n in &low.files {
                let Some(path) = normalise(&self.files[file].path, &n.text) else {
                    out.push(
                        Diagnostic::new(&codes::USE_OUTSIDE_ROOT, n.loc, format!("`{}` lies outside the project's root.", n.text))
                            .at("climbs out")
                            .help("Only what lies below the root is read: a path with `/`, relative to this file."),
                    );
                    continue;
                };
                let a = self
                    .cache
                    .attached
                    .entry(path)
                    .or_insert_with_key(|p| Arc::new(Attachment::load(p, loader)));
                if let Err(e) = &a.content {
                    let mut d = Diagnostic::new(
                        &codes::USE_NOT_FOUND,
                        n.loc,
                        format!("`{}` cannot be used: {e}.", n.text),
                    )
                    .at("not read");
                    if *e == LoadError::NotFound {
                        d = d.help(format!(
                            "Looked for `{}` below the root. The path is relative to this file.",
                            a.path
                        ));
                    }
                    out.push(d);
                }
                to.insert(n.loc, Arc::clone(a));
            }
        }
    }

    /// The items of a file that say something, with their meaning.
    fn lowered(&mut self, file: usize, env: &Env) -> Vec<(Arc<Item>, Arc<Lowered>)> {
        let items: Vec<Arc<Item>> = self.files[file]
            .tree
            .items()
            .iter()
            .filter(|p| p.item.statement().is_some())
            .map(|p| Arc::clone(&p.item))
            .collect();
        items
            .into_iter()
            .map(|i| {
                let low = self.cache.lower.get(&i, &env.lets, env.lets_key);
                (i, low)
            })
            .collect()
    }

    fn compute(&mut self, loader: &dyn Loader, stop: &dyn Fn() -> bool) {
        self.unfinished = true;
        let mut scopes = Vec::new();
        let mut alive: FxHashSet<(ItemId, usize)> = FxHashSet::default();
        for file in 0..self.files.len() {
            if !self.files[file].root {
                continue;
            }
            let visible = self.visible(file);
            let trees: Vec<&File> = visible.iter().map(|i| &self.files[*i].tree).collect();
            let mut diagnostics = Vec::new();
            let mut env = Env::gather(&trees, &mut self.cache.lower, &mut diagnostics);
            drop(trees);
            let own = self.lowered(file, &env);
            let mut attachments = Attachments::default();
            self.attach(file, &own, loader, &mut attachments, &mut diagnostics);
            let mut used = Vec::new();
            for i in visible {
                if i == file {
                    continue;
                }
                let theirs = self.lowered(i, &env);
                self.attach(i, &theirs, loader, &mut attachments, &mut diagnostics);
                if !self.files[i].root {
                    used.extend(theirs.into_iter().map(|x| x.1));
                }
            }
            env.attachments = attachments;
            let mut items = Vec::new();
            let mut names: FxHashMap<Box<str>, Loc> = FxHashMap::default();
            for (item, low) in own {
                let name = match &low.meaning {
                    Meaning::Station(s) => Some(&s.name),
                    Meaning::Chain(c) => Some(&c.name),
                    Meaning::Session(s) => Some(&s.name),
                    _ => None,
                };
                if let Some(n) = name
                    && let Some(first) = names.insert(n.text.clone(), n.loc)
                {
                    diagnostics.push(
                        Diagnostic::new(
                            &codes::DUPLICATE_NAME,
                            n.loc,
                            format!("`{}` is the name of two things.", n.text),
                        )
                        .at("again here")
                        .also(first, "first here"),
                    );
                }
                let key = (item.id, file);
                alive.insert(key);
                let valid = self.cache.results.get(&key).filter(|(stamp, r)| {
                    *stamp == low.stamp
                        && r.depends
                            .iter()
                            .all(|(k, n, id)| env.identity(*k, n) == *id)
                });
                let result = match valid {
                    Some((_, r)) => Arc::clone(r),
                    None => {
                        if stop() {
                            return;
                        }
                        let r = Arc::new(evaluate_item(&low, &env));
                        self.cache.results.insert(key, (low.stamp, Arc::clone(&r)));
                        r
                    }
                };
                items.push((item, low, result));
            }
            scopes.push(Scope {
                file,
                env: Arc::new(env),
                items,
                used,
                diagnostics,
            });
        }
        if self.cache.results.len() > alive.len() + alive.len() / 16 + 8 {
            self.cache.results.retain(|k, _| alive.contains(k));
        }
        let ids: FxHashSet<ItemId> = self
            .files
            .iter()
            .flat_map(|f| f.tree.items().iter().map(|p| p.item.id))
            .collect();
        self.cache.lower.sweep(&|id| ids.contains(&id), ids.len());
        self.scopes = scopes;
        self.unfinished = false;
        // what no scope holds any more is read anew when it is named again
        self.cache.attached.retain(|_, a| Arc::strong_count(a) > 1);
    }

    /// How many items and results are kept for the next version: little more than there are, however
    /// often the text was edited.
    #[must_use]
    pub fn kept(&self) -> (usize, usize) {
        (self.cache.lower.len(), self.cache.results.len())
    }

    /// The files.
    #[must_use]
    pub fn files(&self) -> &[FileEntry] {
        &self.files
    }

    /// One scope for each named file.
    #[must_use]
    pub fn scopes(&self) -> &[Scope] {
        &self.scopes
    }

    /// Indices of the files a file uses directly, each with the place of the path.
    #[must_use]
    pub fn uses(&self, file: usize) -> &[(usize, Loc)] {
        &self.files[file].uses
    }

    /// Where a place is: index of the file and range in it. None for the built-in library.
    #[must_use]
    pub fn place(&self, loc: Loc) -> Option<(usize, Span)> {
        self.files.iter().enumerate().find_map(|(i, f)| {
            let p = f.tree.items().iter().find(|p| p.item.id == loc.item)?;
            Some((i, loc.span.shift(p.start)))
        })
    }

    /// All findings, in order of file and place.
    #[must_use]
    pub fn diagnostics(&self) -> Vec<Diagnostic> {
        let index = self.index();
        let mut out: Vec<Diagnostic> = self.load_diagnostics.clone();
        for f in &self.files {
            out.extend(quiet(f.tree.diagnostics().collect(), &f.tree));
        }
        let mut definitions: FxHashSet<ItemId> = FxHashSet::default();
        for s in &self.scopes {
            out.extend(s.diagnostics.iter().cloned());
            for (item, low, r) in &s.items {
                if definitions.insert(item.id) {
                    out.extend(low.diagnostics.iter().cloned());
                }
                out.extend(r.diagnostics.iter().cloned());
            }
            for low in &s.used {
                out.extend(low.diagnostics.iter().cloned());
            }
        }
        out.extend(self.edited_readings());
        below_open_blocks(&mut out);
        let key = |d: &Diagnostic| {
            let at = index
                .get(&d.primary.loc.item)
                .copied()
                .unwrap_or((usize::MAX, 0));
            (
                at.0,
                at.1 + d.primary.loc.span.start,
                d.primary.loc.span.end,
                d.code.id,
            )
        };
        out.sort_by_cached_key(key);
        out.dedup_by(|a, b| {
            a.code.id == b.code.id && a.primary.loc == b.primary.loc && a.message == b.message
        });
        out
    }

    /// The file of readings or the network of that path, if something takes it.
    pub(crate) fn attached(&self, path: &str) -> Option<Arc<Attachment>> {
        self.cache.attached.get(path).cloned()
    }

    /// File and offset of every item.
    pub(crate) fn index(&self) -> FxHashMap<ItemId, (usize, u32)> {
        let mut m = FxHashMap::default();
        for (i, f) in self.files.iter().enumerate() {
            for p in f.tree.items() {
                m.insert(p.item.id, (i, p.start));
            }
        }
        m
    }
}

/// Where a brace is missing, the statements around it stand in the wrong block: what is said of
/// their places follows from that one slip.
fn below_open_blocks(found: &mut Vec<Diagnostic>) {
    // from where on an item is in doubt; and whether the first finding about a place may be the slip
    let mut doubtful: FxHashMap<ItemId, (u32, bool)> = FxHashMap::default();
    for d in found.iter() {
        if d.code.id == codes::UNCLOSED_BLOCK.id {
            doubtful.insert(d.primary.loc.item, (d.primary.loc.span.start, false));
        } else if d.code.id == codes::UNMATCHED_BRACE.id {
            doubtful.insert(d.primary.loc.item, (0, true));
        }
    }
    if doubtful.is_empty() {
        return;
    }
    let of_place = |d: &Diagnostic| {
        [
            &codes::MISPLACED_STATEMENT,
            &codes::UNKNOWN_STATEMENT,
            &codes::MISSING_VALUE,
        ]
        .contains(&d.code)
    };
    let of_shape = |d: &Diagnostic| {
        [
            &codes::UNKNOWN_PART,
            &codes::PART_UNUSED,
            &codes::CHAIN_WITHOUT_START,
            &codes::CHAIN_WITHOUT_END,
            &codes::PART_AFTER_END,
        ]
        .contains(&d.code)
    };
    let mut first: FxHashMap<ItemId, u32> = FxHashMap::default();
    for d in found.iter().filter(|d| of_place(d)) {
        let at = first.entry(d.primary.loc.item).or_insert(u32::MAX);
        *at = (*at).min(d.primary.loc.span.start);
    }
    found.retain(|d| {
        let (item, start) = (d.primary.loc.item, d.primary.loc.span.start);
        match doubtful.get(&item) {
            Some((from, slip)) if start >= *from => {
                !of_shape(d) && (!of_place(d) || *slip && first.get(&item) == Some(&start))
            }
            _ => true,
        }
    });
}

/// One slip in the head of a block leaves all its lines inside no block: that is one finding, not
/// one a line.
fn quiet(found: Vec<Diagnostic>, tree: &File) -> Vec<Diagnostic> {
    let mut out: Vec<Diagnostic> = Vec::with_capacity(found.len());
    // items whose first line is broken, and where the finding about stray lines of an item is
    let mut broken: FxHashSet<ItemId> = FxHashSet::default();
    let mut stray: FxHashMap<ItemId, (usize, usize)> = FxHashMap::default();
    if found.is_empty() {
        return found;
    }
    let texts: FxHashMap<ItemId, &str> = tree
        .items()
        .iter()
        .map(|p| (p.item.id, p.item.text()))
        .collect();
    for d in &found {
        let item = d.primary.loc.item;
        let text = texts.get(&item).copied().unwrap_or("");
        let head = text.find('\n').unwrap_or(text.len());
        // a brace too many is what is quietened below: it is no slip of the head that explains itself away
        let follows = [&codes::MISPLACED_STATEMENT, &codes::UNMATCHED_BRACE].contains(&d.code);
        if (d.primary.loc.span.start as usize) < head && !follows {
            broken.insert(item);
        }
    }
    for d in found {
        let item = d.primary.loc.item;
        let misplaced = d.code.id == codes::MISPLACED_STATEMENT.id;
        if broken.contains(&item) && (misplaced || d.code.id == codes::UNMATCHED_BRACE.id) {
            continue;
        }
        if misplaced {
            if let Some((_, more)) = stray.get_mut(&item) {
                *more += 1;
                continue;
            }
            stray.insert(item, (out.len(), 0));
        }
        out.push(d);
    }
    for (at, more) in stray.into_values().filter(|s| s.1 > 0) {
        let words = if more == 1 {
            "One more line".to_owned()
        } else {
            format!("{more} more lines")
        };
        out[at].help.push(format!(
            "{words} below it stand{} there too.",
            if more == 1 { "s" } else { "" }
        ));
    }
    out
}

fn uses_of(tree: &File) -> Vec<ItemId> {
    tree.items()
        .iter()
        .filter(|p| keyword_of(&p.item) == Some("use"))
        .map(|p| p.item.id)
        .collect()
}

/// Computes the chains of one item.
fn evaluate_item(low: &Lowered, env: &Env) -> ItemResult {
    let mut r = ItemResult::default();
    match &low.meaning {
        Meaning::Station(st) => {
            for c in &st.chains {
                r.chains
                    .push(chain_of(Some(st), c, env, &mut r.diagnostics));
            }
            checks::station(st, env, &mut r.diagnostics);
            depends(Some(st), &st.chains, env, &mut r);
        }
        Meaning::Chain(c) => {
            r.chains.push(chain_of(None, c, env, &mut r.diagnostics));
            depends(None, std::slice::from_ref(c), env, &mut r);
        }
        Meaning::Session(s) => {
            let found = crate::bench::evaluate(s, env, &mut r.diagnostics);
            r.session = Some(Box::new(found));
            r.depends = crate::bench::depends(s, env);
        }
        Meaning::Cable(c) => {
            checks::cable(c, &mut r.diagnostics);
            checks::replaced(
                "cable",
                &c.name,
                library().cable(&c.name.text).is_some(),
                &mut r.diagnostics,
            );
        }
        Meaning::Connector(c) => {
            checks::replaced(
                "connector",
                &c.name,
                library().connector(&c.name.text).is_some(),
                &mut r.diagnostics,
            );
        }
        Meaning::Device(c) => {
            checks::replaced(
                "device",
                &c.name,
                library().device(&c.name.text).is_some(),
                &mut r.diagnostics,
            );
        }
        _ => {}
    }
    network::notes(low, env, &mut r.diagnostics);
    network::depends(low, env, &mut r);
    dedup(&mut r.diagnostics);
    r
}

/// One finding for several bands is one finding.
fn dedup(d: &mut Vec<Diagnostic>) {
    let mut seen = FxHashSet::default();
    d.retain(|d| seen.insert((d.code.id, d.primary.loc, d.message.clone())));
}

fn chain_of(
    station: Option<&Station>,
    c: &downlead_station::model::Chain,
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> ChainResult {
    let stops = walk::walk(&c.steps, station, out);
    let direction: Direction = walk::direction(c, &stops);
    walk::shape(c, &stops, direction, env, out);
    let cx = Cx {
        station,
        chain: c,
        env,
        direction,
    };
    let points = points(c, direction, env, out);
    checks::chain(&cx, &stops, &points, out);
    let mut found = checks::PerPoint::default();
    let mut bands = Vec::with_capacity(points.len());
    for p in &points {
        let mut here = Vec::new();
        bands.push(chain::evaluate(&cx, &stops, p, &mut here));
        found.add(p, here);
    }
    found.finish(out);
    let result = ChainResult {
        name: c.name.loc,
        loc: c.loc,
        direction,
        bands: bands.into(),
    };
    checks::swr_cost(&result, out);
    result
}

/// Notes every name of a definition that took part.
fn depends(
    station: Option<&Station>,
    chains: &[downlead_station::model::Chain],
    env: &Env,
    r: &mut ItemResult,
) {
    use downlead_station::model::{BandRef, Figure, Name, PartData, Step, When};
    let mut names: FxHashSet<(u8, Box<str>)> = FxHashSet::default();
    // a figure on a band that is not defined would never hold, and nobody would see it
    let mut unknown: Vec<Diagnostic> = Vec::new();
    let mut add = |k: u8, n: &Name| {
        match k {
            1 if env.band(&n.text).is_none() => unknown.extend(unknown_band(n, env)),
            5 if env.instrument(&n.text).is_none() && !env.is_broken(&n.text) => {
                unknown.push(unknown_instrument(n, env))
            }
            _ => {}
        }
        names.insert((k, n.text.clone()));
    };
    fn figures(f: &[Figure], add: &mut dyn FnMut(u8, &Name)) {
        for f in f {
            if let When::Bands(b) = &f.when {
                b.iter().for_each(|n| add(1, n));
            }
            if let Some(i) = &f.meta.instrument {
                add(5, i);
            }
        }
    }
    fn files(f: &[downlead_station::model::NetworkFile], add: &mut dyn FnMut(u8, &Name)) {
        f.iter()
            .for_each(|n| figures(std::slice::from_ref(&n.figure), add));
    }
    fn device(d: &downlead_station::model::Device, add: &mut dyn FnMut(u8, &Name)) {
        d.class.iter().for_each(|n| add(4, n));
        d.ports.iter().for_each(|q| {
            figures(&q.loss, add);
            files(&q.network, add);
        });
        figures(&d.swr, add);
        figures(&d.gain, add);
    }
    fn part(p: &downlead_station::model::Part, add: &mut dyn FnMut(u8, &Name)) {
        match &p.data {
            PartData::Line(l) => {
                l.cable.iter().for_each(|n| add(2, n));
                for f in [&l.loss, &l.added, &l.wet] {
                    figures(f, add);
                }
                files(&l.network, add);
            }
            PartData::Connector(_, n) => add(3, n),
            PartData::Device(d) => device(d, add),
            PartData::Antenna(a) => {
                a.gain
                    .iter()
                    .for_each(|g| figures(std::slice::from_ref(&g.figure), add));
                figures(&a.swr, add);
                files(&a.network, add);
                a.impedance
                    .iter()
                    .for_each(|z| figures(std::slice::from_ref(&z.resistance), add));
            }
            PartData::Transmitter(t) => t
                .power
                .iter()
                .for_each(|x| figures(std::slice::from_ref(&x.0), add)),
            PartData::Receiver(_) | PartData::Broken => {}
        }
    }
    fn steps(s: &[Step], add: &mut dyn FnMut(u8, &Name)) {
        use downlead_station::model::Node;
        for s in s {
            match s {
                Step::Part { part: p, branches } => {
                    part(p, add);
                    branches.iter().for_each(|b| steps(&b.steps, add));
                }
                Step::Use { branches, .. } => branches.iter().for_each(|b| steps(&b.steps, add)),
                Step::Node(n, _) => {
                    let on = match &**n {
                        Node::Read { on, meta, .. } => {
                            meta.instrument.iter().for_each(|i| add(5, i));
                            on
                        }
                        Node::Log { on, instrument, .. } => {
                            instrument.iter().for_each(|i| add(5, i));
                            on
                        }
                        Node::Expect { on, .. } | Node::Limit { on, .. } => on,
                    };
                    on.iter().for_each(|b| add(1, b));
                }
                Step::Broken(_) => {}
            }
        }
    }
    if let Some(st) = station {
        st.joins.iter().for_each(|n| add(3, n));
        st.parts.iter().for_each(|p| part(p, &mut add));
    }
    for c in chains {
        for b in &c.bands {
            if let BandRef::Named(n) = b {
                add(1, n);
            }
        }
        steps(&c.steps, &mut add);
    }
    r.diagnostics.append(&mut unknown);
    // the figures of a device definition name bands too
    let classes: Vec<Box<str>> = names
        .iter()
        .filter(|n| n.0 == 4)
        .map(|n| n.1.clone())
        .collect();
    for c in classes.iter().filter_map(|n| env.device(n)) {
        let mut add = |k: u8, n: &Name| {
            names.insert((k, n.text.clone()));
        };
        device(&c.device, &mut add);
    }
    let mut list: Vec<_> = names
        .into_iter()
        .map(|(k, n)| {
            let id = env.identity(k, &n);
            (k, n, id)
        })
        .collect();
    list.sort();
    r.depends = list;
}
