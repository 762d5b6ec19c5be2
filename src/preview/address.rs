//! Who may ask, and for what: this machine alone, from its own pages.

/// What somebody has asked for, as far as it matters here.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(super) struct Asked {
    /// `GET`, `HEAD`, …
    pub(super) method: String,
    /// The path and the query.
    pub(super) target: String,
    /// The `Host` header.
    pub(super) host: Option<String>,
    /// The `Origin` header.
    pub(super) origin: Option<String>,
    /// The `Sec-Fetch-Site` header.
    pub(super) from_site: Option<String>,
}

/// Why an answer is refused: the status, and a sentence.
pub(super) type Refused = (u16, &'static str);

impl Asked {
    /// The path inside the site, without a query.
    ///
    /// # Errors
    /// A request under another name than this machine's own (a page elsewhere may have had its name pointed here), one that a
    /// page of another origin has made, one that would change something, and a path that leads upwards.
    pub(super) fn path(&self, port: u16) -> Result<&str, Refused> {
        let names =
            [format!("127.0.0.1:{port}"), format!("localhost:{port}"), format!("[::1]:{port}")];
        match &self.host {
            None => return Err((400, "the request does not say whom it is for")),
            Some(host) if !names.contains(host) => {
                return Err((403, "this preview answers only to the name of this machine"));
            }
            Some(_) => {}
        }
        let own = |origin: &str| {
            origin.strip_prefix("http://").is_some_and(|name| names.iter().any(|own| own == name))
        };
        let elsewhere = self.origin.as_deref().is_some_and(|origin| !own(origin))
            || self
                .from_site
                .as_deref()
                .is_some_and(|site| !matches!(site, "same-origin" | "none"));
        if elsewhere {
            return Err((403, "this preview answers only to its own pages"));
        }
        if !matches!(self.method.as_str(), "GET" | "HEAD") {
            return Err((405, "this preview only shows pages"));
        }
        let path = self.target.split(['?', '#']).next().unwrap_or_default();
        let Some(inside) = path.strip_prefix('/') else {
            return Err((400, "an address begins with a stroke"));
        };
        // No page's name holds anything that would have to be escaped, so an escape can only hide something.
        if inside.split('/').any(|part| part == "..") || inside.contains(['\\', '%', '\0']) {
            return Err((400, "there is no such address"));
        }
        Ok(inside)
    }

    /// The number that follows `name=` in the query.
    pub(super) fn number(&self, name: &str) -> Option<u64> {
        let (_, query) = self.target.split_once('?')?;
        query.split('&').find_map(|part| part.strip_prefix(name)?.strip_prefix('=')?.parse().ok())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn asked(target: &str) -> Asked {
        Asked {
            method: "GET".to_owned(),
            target: target.to_owned(),
            host: Some("127.0.0.1:8017".to_owned()),
            ..Asked::default()
        }
    }

    #[test]
    fn a_page_of_this_machine_is_shown() {
        assert_eq!(asked("/public/index.html?a=1").path(8017), Ok("public/index.html"));
        let by_name = Asked { host: Some("localhost:8017".to_owned()), ..asked("/") };
        assert_eq!(by_name.path(8017), Ok(""));
        let own = Asked {
            origin: Some("http://localhost:8017".to_owned()),
            from_site: Some("same-origin".to_owned()),
            ..asked("/")
        };
        assert_eq!(own.path(8017), Ok(""));
    }

    #[test]
    fn a_name_that_was_pointed_here_is_refused() {
        for host in
            ["quillmere.example:8017", "127.0.0.1:80", "127.0.0.1", "localhost.example:8017"]
        {
            let asked = Asked { host: Some(host.to_owned()), ..asked("/") };
            assert_eq!(asked.path(8017).map_err(|(status, _)| status), Err(403), "{host}");
        }
        let nobody = Asked { host: None, ..asked("/") };
        assert_eq!(nobody.path(8017).map_err(|(status, _)| status), Err(400));
    }

    #[test]
    fn a_page_of_another_origin_is_refused() {
        for origin in
            ["http://quillmere.example", "null", "http://127.0.0.1:9000", "https://127.0.0.1:8017"]
        {
            let asked = Asked { origin: Some(origin.to_owned()), ..asked("/") };
            assert_eq!(asked.path(8017).map_err(|(status, _)| status), Err(403), "{origin}");
        }
        for site in ["cross-site", "same-site"] {
            let asked = Asked { from_site: Some(site.to_owned()), ..asked("/") };
            assert_eq!(asked.path(8017).map_err(|(status, _)| status), Err(403), "{site}");
        }
    }

    #[test]
    fn nothing_can_be_changed_and_no_path_leads_upwards() {
        let post = Asked { method: "POST".to_owned(), ..asked("/") };
        assert_eq!(post.path(8017).map_err(|(status, _)| status), Err(405));
        for target in [
            "/../private.toml",
            "/public/../../etc/passwd",
            "/%2e%2e/private.toml",
            "/a\\..\\b",
            "//%00",
            "x",
        ] {
            assert_eq!(
                asked(target).path(8017).map_err(|(status, _)| status),
                Err(400),
                "{target}"
            );
        }
    }

    #[test]
    fn a_number_is_read_from_the_query() {
        assert_eq!(asked("/-preview/next?after=12").number("after"), Some(12));
        assert_eq!(asked("/-preview/next?later=12").number("after"), None);
        assert_eq!(asked("/-preview/next?after=x").number("after"), None);
    }
}
