//! A small server for the built page: kinds, packings, caching and security headers.

use crate::{headers, packed};
use anyhow::{Result, anyhow};
use std::fs;
use std::io::Write as _;
use std::net::TcpListener;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::thread;
use tiny_http::{HTTPVersion, Header, Method, Request, Response, Server};

/// A server at work.
pub(crate) struct Serving {
    /// Where the page is: `http://127.0.0.1:8080/`.
    pub(crate) address: String,
    /// The threads that answer.
    workers: Vec<thread::JoinHandle<()>>,
}

impl Serving {
    /// Serves for as long as the program runs.
    pub(crate) fn wait(self) {
        for worker in self.workers {
            let _ended = worker.join();
        }
    }
}

/// Takes a port of this machine; 0 takes any free one.
pub(crate) fn listen(port: u16) -> Result<TcpListener> {
    TcpListener::bind(("127.0.0.1", port)).map_err(|_| {
        let free = (port..=u16::MAX)
            .skip(1)
            .find(|&other| TcpListener::bind(("127.0.0.1", other)).is_ok());
        let advice = free.map_or_else(String::new, |free| {
            format!(" The next free one: `cargo xtask serve --port {free}`")
        });
        anyhow!("port {port} is taken, or not allowed.{advice}")
    })
}

/// Starts serving `folder` below the path `under` (`/` for the top).
pub(crate) fn start(folder: &Path, under: &str, listener: TcpListener) -> Result<Serving> {
    let folder = folder
        .canonicalize()
        .map_err(|_| anyhow!("{} is not there; run `cargo xtask build`", folder.display()))?;
    let address = format!("http://{}{under}", listener.local_addr()?);
    let server =
        Arc::new(Server::from_listener(listener, None).map_err(|trouble| anyhow!("{trouble}"))?);
    let mut workers = Vec::new();
    for _ in 0..4 {
        let (server, folder, under) = (Arc::clone(&server), folder.clone(), under.to_owned());
        workers.push(thread::spawn(move || {
            for request in server.incoming_requests() {
                answer(request, &folder, &under);
            }
        }));
    }
    Ok(Serving { address, workers })
}

fn answer(request: Request, folder: &Path, under: &str) {
    let found = if matches!(request.method(), Method::Get | Method::Head) {
        find(&request, folder, under)
    } else {
        Err(405)
    };
    let response = match found {
        Ok(response) => response,
        Err(code) => Response::from_data(format!("{code}\n")).with_status_code(code),
    };
    let response = headers::always()
        .iter()
        .fold(response, |response, (name, value)| {
            with(response, name, value)
        });
    // A browser that has gone away needs no answer.
    let _sent = send(request, response);
}

/// One answer a connection, as version 1.0 has it. The library hands each connection to a thread
/// for as long as the browser holds it, and in a burst may hand one to a thread that is held.
fn send(request: Request, response: Answer) -> std::io::Result<()> {
    let is_head = *request.method() == Method::Head;
    let mut writer = request.into_writer();
    response.raw_print(&mut writer, HTTPVersion(1, 0), &[], is_head, None)?;
    writer.flush()
}

type Answer = Response<std::io::Cursor<Vec<u8>>>;

fn with(response: Answer, name: &str, value: &str) -> Answer {
    match Header::from_bytes(name, value) {
        Ok(header) => response.with_header(header),
        Err(()) => response,
    }
}

fn find(request: &Request, folder: &Path, under: &str) -> Result<Answer, u16> {
    let path = request.url().split(['?', '#']).next().unwrap_or_default();
    let path = path.strip_prefix(under).ok_or(404_u16)?;
    let path = if path.is_empty() { "index.html" } else { path };
    let file = inside(folder, path).ok_or(404_u16)?;
    let hashed = packed::is_hashed(path);
    let (bytes, packing) = best(&file, &asked(request, "Accept-Encoding")).ok_or(500_u16)?;
    let tag = format!("\"{}\"", packed::short(&bytes));
    let fresh = asked(request, "If-None-Match") == tag;
    let mut response = if fresh {
        Response::from_data(Vec::new()).with_status_code(304)
    } else {
        Response::from_data(bytes)
    };
    response = with(response, "Content-Type", headers::kind(path));
    response = with(response, "Cache-Control", headers::caching(hashed));
    response = with(response, "ETag", &tag);
    if let Some(packing) = packing {
        response = with(response, "Content-Encoding", packing);
    }
    Ok(response)
}

/// The file of that path, as long as it lies in the folder: neither `..` nor a link leads out.
fn inside(folder: &Path, path: &str) -> Option<PathBuf> {
    folder
        .join(path)
        .canonicalize()
        .ok()
        .filter(|file| file.starts_with(folder) && file.is_file())
}

fn asked(request: &Request, name: &'static str) -> String {
    request
        .headers()
        .iter()
        .find(|header| header.field.equiv(name))
        .map(|header| header.value.to_string())
        .unwrap_or_default()
}

/// The smallest copy the browser can unpack.
fn best(file: &Path, accepted: &str) -> Option<(Vec<u8>, Option<&'static str>)> {
    for (packing, end) in [("br", "br"), ("gzip", "gz")] {
        let copy = PathBuf::from(format!("{}.{end}", file.display()));
        if accepts(accepted, packing) && copy.is_file() {
            return Some((fs::read(copy).ok()?, Some(packing)));
        }
    }
    Some((fs::read(file).ok()?, None))
}

fn accepts(accepted: &str, packing: &str) -> bool {
    accepted.split(',').any(|entry| {
        let (name, weight) = entry.split_once(';').unwrap_or((entry, ""));
        name.trim() == packing && !matches!(weight.trim(), "q=0" | "q=0.0")
    })
}

#[cfg(test)]
mod tests {
    use super::{accepts, inside, listen};
    use std::path::Path;

    #[test]
    fn a_packing_that_is_refused_is_not_sent() {
        assert!(accepts("gzip, deflate, br;q=0.9", "br"));
        assert!(!accepts("gzip, br;q=0", "br"));
        assert!(!accepts("", "gzip"));
    }

    #[test]
    fn a_port_that_is_taken_is_named_with_the_next_free_one() {
        let held = listen(0).unwrap();
        let port = held.local_addr().unwrap().port();
        let trouble = listen(port).unwrap_err().to_string();
        assert!(trouble.contains(&format!("port {port} is taken")));
        assert!(trouble.contains("cargo xtask serve --port"));
    }

    #[test]
    fn no_path_leads_out_of_the_folder() {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("src")
            .canonicalize()
            .unwrap();
        assert!(inside(&folder, "main.rs").is_some());
        for path in [
            "../Cargo.toml",
            "../../Cargo.lock",
            "/etc/hosts",
            "toolchain",
            "nothing",
        ] {
            assert!(inside(&folder, path).is_none(), "{path}");
        }
    }
}
