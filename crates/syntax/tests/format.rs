//! The formatter, by example.

use downlead_syntax::format;

#[track_caller]
fn check(before: &str, after: &str) {
    assert_eq!(format(before), after);
    assert_eq!(format(after), after, "once more");
}

#[test]
fn blanks_are_put_in_order() {
    check("let   a=30 m+2*3 m", "let a = 30 m + 2 * 3 m\n");
    check("x  {a 1 m ;b 2 m}", "x { a 1 m; b 2 m }\n");
    check("x{\n y  1 m,z ,  w\n}", "x {\n    y 1 m, z, w\n}\n");
    check(
        "x {\n y   46m   ± 0.5   m\n}",
        "x {\n    y 46m ± 0.5 m\n}\n",
    );
    check("x {\n\t\ty (  a+b )*-c\n}", "x {\n    y (a + b) * -c\n}\n");
    check("x a - 5 m", "x a - 5 m\n");
    check("x = - 5 m", "x = - 5 m\n");
    check("x 7-16 4.3-10", "x 7-16 4.3-10\n");
}

#[test]
fn numbers_and_spellings_stay_as_typed() {
    check("x 0.50 dB +/- 1.0e-1 dB", "x 0.50 dB +/- 1.0e-1 dB\n");
    check("x 5 u 3 dB/100m", "x 5 u 3 dB/100m\n");
}

#[test]
fn comments_stay_where_they_are() {
    check(
        "// a  b\nx {   // why   \n      // inner\n  y 1   //  z\n}\n",
        "// a  b\nx { // why\n    // inner\n    y 1 //  z\n}\n",
    );
}

#[test]
fn at_most_one_empty_line() {
    check("\n\n\na\n\n\n\nb\n \n\n", "a\n\nb\n");
    check("a {\n\n\n    x\n\n}\n", "a {\n\n    x\n\n}\n");
    check("", "");
    check("\n \n", "");
}

#[test]
fn line_ends_are_respected() {
    check("a {\r\n x 1\r\n\r\n\r\n}", "a {\r\n    x 1\r\n\r\n}\r\n");
}

#[test]
fn broken_lines_keep_their_blanks() {
    check(
        "a {\n  b  ± ±   3  \n  c   1 ;  d  (  2\n  e   1\n}",
        "a {\n    b  ± ±   3\n    c   1 ;  d  (  2\n    e 1\n}\n",
    );
}

#[test]
fn unbalanced_items_keep_their_indentation() {
    let text = "station s {\n  run M1 3 m {\n  z  1\n}\nlet  a = 1\n";
    check(text, "station s {\n  run M1 3 m {\n  z  1\n}\nlet a = 1\n");
}
