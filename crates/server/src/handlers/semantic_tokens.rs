//! Semantic tokens: whole, a range, what changed.

use downlead_base::Span;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

use crate::state::State;
use crate::view::View;

fn encode(v: &View<'_>, tokens: &[ide::Token]) -> Vec<SemanticToken> {
    let encoding = v.state.peer.encoding;
    let (mut line, mut column) = (0, 0);
    let mut out = Vec::with_capacity(tokens.len());
    for t in tokens {
        let at = v.position(t.span.start);
        let Some(text) = v.text.get(t.span.range()) else {
            continue;
        };
        let delta_line = at.line - line;
        let delta_start = if delta_line == 0 {
            at.character - column
        } else {
            at.character
        };
        (line, column) = (at.line, at.character);
        out.push(SemanticToken {
            delta_line,
            delta_start,
            length: encoding.len(text),
            token_type: t.kind.index(),
            token_modifiers_bitset: t.modifiers,
        });
    }
    out
}

fn whole(st: &mut State, uri: &Uri) -> Result<Option<Vec<SemanticToken>>> {
    let Some(v) = st.text_view(uri)? else {
        return Ok(None);
    };
    Ok(Some(encode(
        &v,
        &ide::semantic_tokens(v.snapshot, v.doc, None),
    )))
}

/// Remembers what was sent under a new name; gives what was sent before.
fn remember(
    st: &mut State,
    uri: &Uri,
    data: &[SemanticToken],
) -> (String, Option<(String, Vec<SemanticToken>)>) {
    let id = st.docs.tick().to_string();
    let old = st
        .docs
        .get_mut(uri)
        .and_then(|d| d.tokens.replace((id.clone(), data.to_vec())));
    (id, old)
}

pub(crate) fn full(
    st: &mut State,
    p: SemanticTokensParams,
) -> Result<Option<SemanticTokensResult>> {
    let uri = p.text_document.uri;
    let Some(data) = whole(st, &uri)? else {
        return Ok(None);
    };
    let (id, _) = remember(st, &uri, &data);
    Ok(Some(SemanticTokensResult::Tokens(SemanticTokens {
        result_id: Some(id),
        data,
    })))
}

/// The changes since the answer with that result id; all tokens if it is not the last one.
pub(crate) fn delta(
    st: &mut State,
    p: SemanticTokensDeltaParams,
) -> Result<Option<SemanticTokensFullDeltaResult>> {
    let uri = p.text_document.uri;
    let Some(data) = whole(st, &uri)? else {
        return Ok(None);
    };
    let (id, old) = remember(st, &uri, &data);
    let result_id = Some(id);
    Ok(Some(match old {
        Some((name, old)) if name == p.previous_result_id => {
            SemanticTokensFullDeltaResult::TokensDelta(SemanticTokensDelta {
                result_id,
                edits: edit(&old, &data).into_iter().collect(),
            })
        }
        _ => SemanticTokensFullDeltaResult::Tokens(SemanticTokens { result_id, data }),
    }))
}

/// The one edit of the numbers, five a token.
fn edit(old: &[SemanticToken], new: &[SemanticToken]) -> Option<SemanticTokensEdit> {
    let front = old.iter().zip(new).take_while(|(a, b)| a == b).count();
    let most = old.len().min(new.len()) - front;
    let back = old
        .iter()
        .rev()
        .zip(new.iter().rev())
        .take(most)
        .take_while(|(a, b)| a == b)
        .count();
    let gone = old.len() - front - back;
    let fresh = &new[front..new.len() - back];
    if gone == 0 && fresh.is_empty() {
        return None;
    }
    Some(SemanticTokensEdit {
        start: 5 * front as u32,
        delete_count: 5 * gone as u32,
        data: (!fresh.is_empty()).then(|| fresh.to_vec()),
    })
}

pub(crate) fn range(
    st: &mut State,
    p: SemanticTokensRangeParams,
) -> Result<Option<SemanticTokensRangeResult>> {
    let Some(v) = st.text_view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let span: Span = v.span(p.range);
    let data = encode(&v, &ide::semantic_tokens(v.snapshot, v.doc, Some(span)));
    Ok(Some(SemanticTokensRangeResult::Tokens(SemanticTokens {
        result_id: None,
        data,
    })))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tokens(all: &[u32]) -> Vec<SemanticToken> {
        let one = |n: &u32| SemanticToken {
            delta_line: *n,
            delta_start: 0,
            length: 1,
            token_type: 0,
            token_modifiers_bitset: 0,
        };
        all.iter().map(one).collect()
    }

    #[test]
    fn the_edit_makes_the_new_tokens() {
        let lists: [&[u32]; 7] = [
            &[],
            &[1],
            &[1, 1],
            &[1, 2, 1],
            &[1, 2, 2, 1],
            &[3, 2, 1],
            &[1, 2, 3, 4],
        ];
        for a in lists {
            for b in lists {
                let (old, new) = (tokens(a), tokens(b));
                let mut made = old.clone();
                if let Some(e) = edit(&old, &new) {
                    let at = e.start as usize / 5;
                    made.splice(
                        at..at + e.delete_count as usize / 5,
                        e.data.unwrap_or_default(),
                    );
                }
                assert_eq!(made, new, "{a:?} {b:?}");
            }
        }
    }
}
