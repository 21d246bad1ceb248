//! The fenced blocks of a Markdown page.

/// A fenced block.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fence {
    /// The word after the opening fence: `downlead`, `result`, or empty.
    pub info: String,
    /// Its text with the line ends.
    pub text: String,
    /// Line of the opening fence, from 1.
    pub line: usize,
}

/// The blocks fenced by three or more back-quotes at the beginning of a line, in order.
#[must_use]
pub fn fences(markdown: &str) -> Vec<Fence> {
    let mut out = Vec::new();
    let mut open: Option<(usize, Fence)> = None;
    for (i, line) in markdown.split_inclusive('\n').enumerate() {
        let ticks = line.bytes().take_while(|b| *b == b'`').count();
        let rest = line[ticks..].trim();
        match &mut open {
            Some((n, _)) if ticks >= *n && rest.is_empty() => out.extend(open.take().map(|o| o.1)),
            Some((_, fence)) => fence.text.push_str(line),
            None if ticks >= 3 => {
                open = Some((
                    ticks,
                    Fence {
                        info: rest.to_owned(),
                        text: String::new(),
                        line: i + 1,
                    },
                ));
            }
            None => {}
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn blocks_with_their_lines() {
        let f = fences("a\n```x\none\n  two\n```\n````\n```\n````\n```open\n");
        assert_eq!(f.len(), 2);
        assert_eq!(
            (f[0].info.as_str(), f[0].text.as_str(), f[0].line),
            ("x", "one\n  two\n", 2)
        );
        assert_eq!((f[1].info.as_str(), f[1].text.as_str()), ("", "```\n"));
    }
}
