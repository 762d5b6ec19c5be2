use super::tight;

#[track_caller]
fn check(page: &str, expected: &str) {
    assert_eq!(String::from_utf8(tight(page)).expect("UTF-8"), expected);
    assert_eq!(tight(expected), expected.as_bytes(), "what is tight stays as it is");
}

#[test]
fn space_that_shows_is_kept_and_space_that_does_not_is_left_out() {
    check(
        "<!doctype html>\n<html lang=\"en\">\n<body>\n  <p>\n a  <b>b</b> \n c <i> d</i></p>\n\n<ul>\n<li>e</li>\n</ul></body>",
        "<!doctype html><html lang=en><body><p>a <b>b</b> c <i> d</i><ul><li>e</ul></body>",
    );
    check("<p>a<!-- not for readers --> b", "<p>a b");
    check(
        "<pre> a\n  b </pre> <textarea>\n c </textarea>",
        "<pre> a\n  b </pre> <textarea>\n c </textarea>",
    );
    check("a < b &amp; c &lt; d", "a < b &amp; c &lt; d");
}

#[test]
fn attributes_lose_the_quotes_they_do_not_need() {
    check(
        "<a  href=\"b.html\"\n class=\"c d\" hidden=\"\">e</a>",
        "<a href=b.html class=\"c d\" hidden>e</a>",
    );
    check("<a href=\"https://example.org/\">", "<a href=\"https://example.org/\">");
    check("<circle r=\"3.6\"/><img src=\"a b.png\" />", "<circle r=3.6 /><img src=\"a b.png\">");
    check("<p title='say \"no\"'>", "<p title='say \"no\"'>");
    check(
        "<a title=\"keeper&#x27;s\">keeper&#x27;s &quot;a&quot;</a>",
        "<a title=\"keeper&#x27;s\">keeper's \"a\"</a>",
    );
}

#[test]
fn end_tags_are_left_out_where_the_next_tag_says_the_same() {
    check(
        "<table><tbody><tr><th>a</th> <td>b</td></tr>\n<tr><td>c</td></tr></tbody></table>",
        "<table><tbody><tr><th>a<td>b<tr><td>c</table>",
    );
    check(
        "<dl><div><dt>a</dt><dd>b<p>c</p></dd></div></dl> <ul><li>d</li><li>e</li></ul>",
        "<dl><div><dt>a<dd>b<p>c</div></dl><ul><li>d<li>e</ul>",
    );
    // The words after a paragraph, and a paragraph in a link, would become part of it.
    check("<div><p>a</p> b</div>", "<div><p>a</p>b</div>");
    check("<a href=b><p>a</p></a>", "<a href=b><p>a</p></a>");
}

#[test]
fn a_page_that_is_cut_short_is_kept_as_far_as_it_goes() {
    for page in ["<", "<a", "<a b", "<a b=", "<a b=\"c", "<!--", "<!d", "<pre>a", "&", "&#x2"] {
        tight(page);
    }
}

#[test]
fn names_of_elements_are_known_in_any_letters() {
    check("<UL> <LI>a</LI> </UL>", "<UL><LI>a</UL>");
    check("<figcaption> a </figcaption>", "<figcaption>a</figcaption>");
    // One letter longer than any name that is known.
    check("<figcaptions> a </figcaptions>", "<figcaptions> a </figcaptions>");
}
