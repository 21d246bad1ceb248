//! A readable picture of the tree, for tests and for looking at what was understood.

use std::fmt::Write;

use crate::{AtomKind, Expr, ExprKind, File, Stmt, Value};

impl File {
    /// The tree as text, one statement a line; with `spans`, also their positions.
    #[must_use]
    pub fn dump(&self, spans: bool) -> String {
        let mut out = String::new();
        for placed in self.items() {
            if spans {
                let _ = writeln!(out, "item {}+{}", placed.start, placed.item.len);
            }
            for stmt in placed.item.statements() {
                statement(&mut out, stmt, 0, spans);
            }
            if spans {
                for d in placed.item.diagnostics() {
                    let span = d.primary.loc.span;
                    let _ = writeln!(
                        out,
                        "  {} {}..{}: {}",
                        d.code.id, span.start, span.end, d.message
                    );
                }
            }
        }
        out
    }
}

fn statement(out: &mut String, stmt: Stmt<'_>, depth: usize, spans: bool) {
    let _ = write!(out, "{:width$}", "", width = depth * 2);
    if spans {
        let (head, whole) = (stmt.head_span(), stmt.span());
        let _ = write!(out, "{}..{}..{} ", head.start, head.end, whole.end);
    }
    if stmt.is_broken() {
        out.push_str("broken ");
    }
    for (i, atom) in stmt.atoms().iter().enumerate() {
        if atom.comma_before {
            out.push_str(" ,");
        }
        if i > 0 {
            out.push(' ');
        }
        match atom.kind {
            AtomKind::Word => out.push_str(stmt.text(*atom)),
            AtomKind::Str => {
                let _ = write!(out, "{:?}", stmt.string(*atom).unwrap_or_default());
            }
            AtomKind::Date => {
                let _ = write!(out, "date:{}", stmt.text(*atom));
            }
            AtomKind::Dms => {
                let _ = write!(out, "dms:{}", stmt.text(*atom));
            }
            AtomKind::Equals => out.push('='),
            AtomKind::Error => {
                let words: Vec<&str> = stmt.text(*atom).split_whitespace().collect();
                let _ = write!(out, "error:{:?}", words.concat());
            }
            AtomKind::Value(_) => {
                if let Some(v) = stmt.value(*atom) {
                    value(out, v);
                }
            }
        }
        if spans {
            let _ = write!(out, "@{}..{}", atom.span.start, atom.span.end);
        }
    }
    match stmt.block() {
        Some(block) => {
            out.push_str(" {\n");
            for inner in block {
                statement(out, inner, depth + 1, spans);
            }
            let _ = writeln!(
                out,
                "{:width$}{}",
                "",
                if block.is_closed() { "}" } else { "(open)" },
                width = depth * 2
            );
        }
        None => out.push('\n'),
    }
}

fn value(out: &mut String, value: Value<'_>) {
    out.push('[');
    expression(out, value.expr());
    if let Some((half, _)) = value.tolerance() {
        out.push_str(" ± ");
        expression(out, half);
    }
    if let Some(k) = value.coverage() {
        let _ = write!(out, " k {k}");
    }
    if let Some(upper) = value.upper() {
        out.push_str(" to ");
        expression(out, upper);
    }
    out.push(']');
}

fn expression(out: &mut String, expr: Expr<'_>) {
    match expr.kind() {
        ExprKind::Number(number) => {
            let _ = write!(out, "{}", number.value);
            if let Some(unit) = number.unit {
                let _ = write!(out, " {}", downlead_quantity::unit(unit).symbol());
            }
        }
        ExprKind::Name(span) => out.push_str(expr.text().get(..span.len() as usize).unwrap_or("?")),
        ExprKind::Neg(inner) => {
            out.push_str("-(");
            expression(out, inner);
            out.push(')');
        }
        ExprKind::Binary(op, left, right) => {
            out.push('(');
            expression(out, left);
            let _ = write!(out, " {} ", op.symbol());
            expression(out, right);
            out.push(')');
        }
        ExprKind::Per(inner, law) => {
            expression(out, inner);
            let whole = expr.span();
            let _ = write!(
                out,
                " per {}",
                &expr.text()[(law.start - whole.start) as usize..]
            );
        }
    }
}
