//! What HTML says of its elements, as far as a page can be closed up by it.

/// Whether what an element holds is kept as it stands.
pub(super) fn is_kept(element: &[u8]) -> bool {
    matches!(element, b"pre" | b"textarea" | b"script" | b"style")
}

/// Whether an HTML element has no end, so that a slash before `>` says nothing.
pub(super) fn is_void(element: &[u8]) -> bool {
    matches!(
        element,
        b"area"
            | b"base"
            | b"br"
            | b"col"
            | b"embed"
            | b"hr"
            | b"img"
            | b"input"
            | b"link"
            | b"meta"
            | b"source"
            | b"track"
            | b"wbr"
    )
}

/// Whether white space beside an element is never shown: those that start a line of their own, those of the head, and shapes,
/// which stand only in drawings.
pub(super) fn is_alone(element: &[u8]) -> bool {
    matches!(
        element,
        b"address"
            | b"article"
            | b"aside"
            | b"base"
            | b"blockquote"
            | b"body"
            | b"br"
            | b"caption"
            | b"circle"
            | b"col"
            | b"colgroup"
            | b"dd"
            | b"desc"
            | b"details"
            | b"div"
            | b"dl"
            | b"dt"
            | b"fieldset"
            | b"figcaption"
            | b"figure"
            | b"footer"
            | b"form"
            | b"g"
            | b"h1"
            | b"h2"
            | b"h3"
            | b"h4"
            | b"h5"
            | b"h6"
            | b"head"
            | b"header"
            | b"hr"
            | b"html"
            | b"legend"
            | b"li"
            | b"line"
            | b"link"
            | b"main"
            | b"meta"
            | b"nav"
            | b"ol"
            | b"p"
            | b"path"
            | b"polyline"
            | b"rect"
            | b"section"
            | b"summary"
            | b"table"
            | b"tbody"
            | b"td"
            | b"tfoot"
            | b"th"
            | b"thead"
            | b"title"
            | b"tr"
            | b"ul"
    )
}

/// The elements before whose start the end tag of an element may be left out; none where it may not. All but that of `dt` may also be left out where
/// the element around them ends.
///
/// Source: HTML Living Standard, WHATWG, section 13.1.2.4 (optional tags).
pub(super) fn implied_before(element: &[u8]) -> Option<&'static [&'static str]> {
    Some(match element {
        b"dd" | b"dt" => &["dd", "dt"],
        b"li" => &["li"],
        b"p" => &BLOCKS,
        b"tbody" => &["tbody", "tfoot"],
        b"td" | b"th" => &["td", "th"],
        b"tr" => &["tr"],
        _ => return None,
    })
}
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
