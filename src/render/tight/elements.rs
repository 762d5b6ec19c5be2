//! What HTML says of its elements, as far as a page can be closed up by it.

/// Elements whose content is kept as it stands.
pub(super) const KEPT: [&str; 4] = ["pre", "textarea", "script", "style"];

/// HTML elements that have no end, where a slash before `>` says nothing.
pub(super) const VOID: [&str; 13] = [
    "area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track",
    "wbr",
];

/// Elements beside which white space is never shown: those that start a line of their own, those of the head, and shapes, which
/// stand only in drawings.
pub(super) const ALONE: [&str; 56] = [
    "address",
    "article",
    "aside",
    "base",
    "blockquote",
    "body",
    "br",
    "caption",
    "circle",
    "col",
    "colgroup",
    "dd",
    "desc",
    "details",
    "div",
    "dl",
    "dt",
    "fieldset",
    "figcaption",
    "figure",
    "footer",
    "form",
    "g",
    "h1",
    "h2",
    "h3",
    "h4",
    "h5",
    "h6",
    "head",
    "header",
    "hr",
    "html",
    "legend",
    "li",
    "line",
    "link",
    "main",
    "meta",
    "nav",
    "ol",
    "p",
    "path",
    "polyline",
    "rect",
    "section",
    "summary",
    "table",
    "tbody",
    "td",
    "tfoot",
    "th",
    "thead",
    "title",
    "tr",
    "ul",
];

/// End tags that may be left out, and the elements before whose start each may be. All but that of `dt` may also be left out where
/// the element around them ends.
///
/// Source: HTML Living Standard, WHATWG, section 13.1.2.4 (optional tags).
pub(super) const IMPLIED: [(&str, &[&str]); 8] = [
    ("dd", &["dd", "dt"]),
    ("dt", &["dd", "dt"]),
    ("li", &["li"]),
    ("p", &BLOCKS),
    ("tbody", &["tbody", "tfoot"]),
    ("td", &["td", "th"]),
    ("th", &["td", "th"]),
    ("tr", &["tr"]),
];
/// Elements that end a paragraph by their start.
pub(super) const BLOCKS: [&str; 22] = [
    "address",
    "article",
    "aside",
    "blockquote",
    "details",
    "div",
    "dl",
    "figcaption",
    "figure",
    "footer",
    "h1",
    "h2",
    "h3",
    "h4",
    "header",
    "hr",
    "main",
    "nav",
    "ol",
    "p",
    "section",
    "ul",
];
/// Elements at whose end a paragraph in them ends as well.
pub(super) const AROUND: [&str; 12] = [
    "article",
    "aside",
    "body",
    "dd",
    "details",
    "div",
    "figcaption",
    "figure",
    "footer",
    "header",
    "li",
    "section",
];
