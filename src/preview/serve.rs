//! Listens on the loopback address and hands requests on.

use std::io;
use std::sync::RwLock;

use tiny_http::{Header, Request, Response, Server};

use super::address::Asked;
use super::answer::{Answer, answer};
use super::bell::Bell;
use super::watched::Watched;

/// How many ports after the wanted one are tried.
const TRIES: u16 = 20;

/// What goes with every answer: nothing is kept, nothing is taken from elsewhere, nobody frames it.
const ALWAYS: [(&str, &str); 4] = [
    ("Cache-Control", "no-store"),
    (
        "Content-Security-Policy",
        "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
    ),
    ("Referrer-Policy", "same-origin"),
    ("X-Content-Type-Options", "nosniff"),
];

/// A server on the loopback address that nobody has asked anything yet.
pub struct Served {
    server: Server,
    port: u16,
}

impl Served {
    /// Takes the wanted port, or the next that is free. Port 0 is any that is free.
    ///
    /// # Errors
    /// When none of them can be had.
    pub fn listen(wanted: u16) -> io::Result<Served> {
        let last = if wanted == 0 { 0 } else { wanted.saturating_add(TRIES) };
        let mut refused = None;
        for port in wanted..=last {
            match Server::http(("127.0.0.1", port)) {
                Ok(server) => {
                    let port = server.server_addr().to_ip().map_or(port, |address| address.port());
                    return Ok(Served { server, port });
                }
                Err(error) => refused = error.downcast::<io::Error>().ok().map(|error| *error),
            }
        }
        Err(refused.unwrap_or_else(|| io::Error::from(io::ErrorKind::AddrInUse)))
    }

    /// The port that was taken.
    pub fn port(&self) -> u16 {
        self.port
    }

    /// Answers until [`Served::end`] is called, each request on a thread of its own: most of them only wait.
    pub(super) fn run(&self, watched: &RwLock<Watched>, bell: &Bell) {
        std::thread::scope(|scope| {
            while let Ok(request) = self.server.recv() {
                scope.spawn(|| respond(request, self.port, watched, bell));
            }
        });
    }

    /// Stops listening.
    pub(super) fn end(&self) {
        self.server.unblock();
    }
}

fn respond(request: Request, port: u16, watched: &RwLock<Watched>, bell: &Bell) {
    let header = |name: &'static str| {
        let found = request.headers().iter().find(|header| header.field.equiv(name));
        found.map(|header| header.value.as_str().to_owned())
    };
    let asked = Asked {
        method: request.method().as_str().to_owned(),
        target: request.url().to_owned(),
        host: header("Host"),
        origin: header("Origin"),
        from_site: header("Sec-Fetch-Site"),
    };
    let Answer { status, media, body } = answer(&asked, port, watched, bell);
    let mut response = Response::from_data(body).with_status_code(status);
    for (name, value) in ALWAYS.into_iter().chain([("Content-Type", media)]) {
        if let Ok(header) = Header::from_bytes(name, value) {
            response.add_header(header);
        }
    }
    // Whoever has gone away is not told.
    let _ = request.respond(response);
}
