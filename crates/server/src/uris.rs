//! Addresses of documents: opaque names to the server, paths only where the disk is asked.

use std::path::{Component, Path, PathBuf};
use std::str::FromStr;

use ls_types::Uri;
use serde_json::Value;
use tower_lsp::jsonrpc::Request;

/// Scheme of the documents the server makes itself.
pub(crate) const SCHEME: &str = "downlead";

/// The request with its addresses encoded, if one of them is not as the standard has it (a blank,
/// a bracket or a letter outside ASCII): the library would refuse the whole message.
pub(crate) fn encoded_request(request: &Request) -> Option<(Request, Vec<u8>)> {
    let params = request.params()?;
    if !broken(params) {
        return None;
    }
    let mut whole = serde_json::to_value(request).ok()?;
    encode_addresses(whole.get_mut("params")?);
    let body = serde_json::to_vec(&whole).ok()?;
    Some((serde_json::from_value(whole).ok()?, body))
}

fn is_address(key: &str) -> bool {
    matches!(
        key,
        "uri" | "rootUri" | "oldUri" | "newUri" | "scopeUri" | "targetUri"
    )
}

fn broken(value: &Value) -> bool {
    match value {
        Value::Object(map) => map.iter().any(|(k, v)| match v {
            Value::String(s) => is_address(k) && Uri::from_str(s).is_err(),
            v => broken(v),
        }),
        Value::Array(all) => all.iter().any(broken),
        _ => false,
    }
}

fn encode_addresses(value: &mut Value) {
    match value {
        Value::Object(map) => {
            for (k, v) in map.iter_mut() {
                match v {
                    Value::String(s) if is_address(k) => {
                        if Uri::from_str(s).is_err() {
                            *s = encoded(s);
                        }
                    }
                    v => encode_addresses(v),
                }
            }
        }
        Value::Array(all) => all.iter_mut().for_each(encode_addresses),
        _ => {}
    }
}

/// Percent-encodes characters that an address must not contain, and turns a path into an address.
fn encoded(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 16);
    for (i, b) in text.bytes().enumerate() {
        let stays = b.is_ascii_alphanumeric()
            || b"-._~!$&'()*+,;=:@/?#".contains(&b)
            || (b == b'%'
                && text
                    .as_bytes()
                    .get(i + 1..i + 3)
                    .is_some_and(|h| h.iter().all(u8::is_ascii_hexdigit)));
        if stays {
            out.push(b as char);
        } else {
            out.push_str(&format!("%{b:02X}"));
        }
    }
    if Uri::from_str(&out).is_err() {
        out = format!("unnamed:{}", out.replace([':', '#', '?'], "_"));
    }
    out
}

/// The path of a `file:` address.
pub(crate) fn to_path(uri: &Uri) -> Option<PathBuf> {
    if uri.scheme().as_str() != "file" {
        return None;
    }
    uri.to_file_path()
        .map(std::borrow::Cow::into_owned)
        .filter(|p| p.is_absolute())
}

/// The address of a path.
pub(crate) fn from_path(path: &Path) -> Option<Uri> {
    path.is_absolute()
        .then(|| Uri::from_file_path(path))
        .flatten()
}

/// `a/b/c` of a path below a folder.
pub(crate) fn below(folder: &Path, path: &Path) -> Option<String> {
    let rest = path.strip_prefix(folder).ok()?;
    let parts: Option<Vec<&str>> = rest
        .components()
        .map(|c| match c {
            Component::Normal(part) => part.to_str(),
            _ => None,
        })
        .collect();
    parts.filter(|p| !p.is_empty()).map(|p| p.join("/"))
}

/// An address of the server's own scheme: `/library/NAME`, or with a query `/report/TITLE.md?…`.
pub(crate) fn own(path: &str, query: Option<&str>) -> Option<Uri> {
    let q = query.map(|q| format!("?{}", escape(q))).unwrap_or_default();
    Uri::from_str(&format!(
        "{SCHEME}:/{}{q}",
        path.split('/').map(escape).collect::<Vec<_>>().join("/")
    ))
    .ok()
}

/// Percent-encodes all but letters, digits and `-._~`.
pub(crate) fn escape(text: &str) -> String {
    let mut out = String::new();
    for b in text.bytes() {
        if b.is_ascii_alphanumeric() || b"-._~".contains(&b) {
            out.push(b as char);
        } else {
            out.push_str(&format!("%{b:02X}"));
        }
    }
    out
}

/// The text with its percent signs read.
pub(crate) fn unescape(text: &str) -> String {
    let bytes = text.as_bytes();
    let mut out = Vec::with_capacity(bytes.len());
    let mut i = 0;
    while i < bytes.len() {
        let hex = (bytes[i] == b'%').then(|| text.get(i + 1..i + 3)).flatten();
        match hex.and_then(|h| u8::from_str_radix(h, 16).ok()) {
            Some(b) => {
                out.push(b);
                i += 3;
            }
            None => {
                out.push(bytes[i]);
                i += 1;
            }
        }
    }
    String::from_utf8_lossy(&out).into_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn odd_addresses_are_encoded() {
        for (from, to) in [
            ("file:///a b/c.downlead", "file:///a%20b/c.downlead"),
            (
                "file:///mät[1].downlead",
                "file:///m%C3%A4t%5B1%5D.downlead",
            ),
            ("file:///a%20b%zz", "file:///a%20b%25zz"),
            ("/plain path", "unnamed:/plain%20path"),
        ] {
            assert_eq!(encoded(from), to);
            Uri::from_str(to).unwrap();
        }
    }

    #[test]
    fn escapes_come_back() {
        let text = "file:///x y?%µ#€";
        assert_eq!(unescape(&escape(text)), text);
        let uri = own("report/a b.md", Some(text)).unwrap();
        assert_eq!(
            uri.query().map(|q| unescape(q.as_str())).as_deref(),
            Some(text)
        );
    }
}
