//! A small HTTP server for the built page: media types, compression, caching, security headers.

use crate::{asset, headers};
use anyhow::{Result, anyhow};
use std::fs;
use std::io::Write as _;
use std::net::TcpListener;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::thread;
use tiny_http::{HTTPVersion, Header, Method, Request, Response, Server};

/// A running server.
pub(crate) struct Running {
    /// The page's address: `http://127.0.0.1:8080/`.
    pub(crate) address: String,
    /// The threads that respond.
    workers: Vec<thread::JoinHandle<()>>,
}

impl Running {
    /// Serves until the program ends.
    pub(crate) fn wait(self) {
        for worker in self.workers {
            let _ended = worker.join();
        }
    }
}

/// Opens a port of this machine; 0 means any free one.
pub(crate) fn listen(port: u16) -> Result<TcpListener> {
    TcpListener::bind(("127.0.0.1", port)).map_err(|_| {
        let free = (port..=u16::MAX)
            .skip(1)
            .find(|&other| TcpListener::bind(("127.0.0.1", other)).is_ok());
        let advice = free.map_or_else(String::new, |free| {
            format!(" The next free one is `cargo xtask serve --port {free}`")
        });
        anyhow!("port {port} is in use, or not allowed.{advice}")
    })
}

/// Starts to serve `folder` below the path `under` (`/` for the root).
pub(crate) fn start(folder: &Path, under: &str, listener: TcpListener) -> Result<Running> {
    let folder = folder.canonicalize().map_err(|_| {
        anyhow!(
            "{} does not exist; run `cargo xtask build`",
            folder.display()
        )
    })?;
    let address = format!("http://{}{under}", listener.local_addr()?);
    let server =
        Arc::new(Server::from_listener(listener, None).map_err(|error| anyhow!("{error}"))?);
    let mut workers = Vec::new();
    for _ in 0..4 {
        let (server, folder, under) = (Arc::clone(&server), folder.clone(), under.to_owned());
        workers.push(thread::spawn(move || {
            for request in server.incoming_requests() {
                respond(request, &folder, &under);
            }
        }));
    }
    Ok(Running { address, workers })
}

fn respond(request: Request, folder: &Path, under: &str) {
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
            with_header(response, name, value)
        });
    // The browser may have closed the connection.
    let _sent = send(request, response);
}

/// Sends one response a connection, by HTTP 1.0. With persistent connections the library keeps a
/// thread for each, and a burst of requests may wait for an idle thread.
fn send(request: Request, response: FileResponse) -> std::io::Result<()> {
    let is_head = *request.method() == Method::Head;
    let mut writer = request.into_writer();
    response.raw_print(&mut writer, HTTPVersion(1, 0), &[], is_head, None)?;
    writer.flush()
}

type FileResponse = Response<std::io::Cursor<Vec<u8>>>;

fn with_header(response: FileResponse, name: &str, value: &str) -> FileResponse {
    match Header::from_bytes(name, value) {
        Ok(header) => response.with_header(header),
        Err(()) => response,
    }
}

fn find(request: &Request, folder: &Path, under: &str) -> Result<FileResponse, u16> {
    let path = request.url().split(['?', '#']).next().unwrap_or_default();
    let path = path.strip_prefix(under).ok_or(404_u16)?;
    let path = if path.is_empty() { "index.html" } else { path };
    let file = file_inside(folder, path).ok_or(404_u16)?;
    let hashed = asset::is_hashed(path);
    let (bytes, encoding) =
        smallest_copy(&file, &request_header(request, "Accept-Encoding")).ok_or(500_u16)?;
    let tag = format!("\"{}\"", asset::content_hash(&bytes));
    let fresh = request_header(request, "If-None-Match") == tag;
    let mut response = if fresh {
        Response::from_data(Vec::new()).with_status_code(304)
    } else {
        Response::from_data(bytes)
    };
    response = with_header(response, "Content-Type", headers::media_type(path));
    response = with_header(response, "Cache-Control", headers::cache_control(hashed));
    response = with_header(response, "ETag", &tag);
    if let Some(encoding) = encoding {
        response = with_header(response, "Content-Encoding", encoding);
    }
    Ok(response)
}

/// The file of that path, if it is inside the folder: neither `..` nor a link leads out.
fn file_inside(folder: &Path, path: &str) -> Option<PathBuf> {
    folder
        .join(path)
        .canonicalize()
        .ok()
        .filter(|file| file.starts_with(folder) && file.is_file())
}

fn request_header(request: &Request, name: &'static str) -> String {
    request
        .headers()
        .iter()
        .find(|header| header.field.equiv(name))
        .map(|header| header.value.to_string())
        .unwrap_or_default()
}

/// The smallest copy that the browser can decompress, and its encoding.
fn smallest_copy(file: &Path, accepted: &str) -> Option<(Vec<u8>, Option<&'static str>)> {
    for (encoding, extension) in [("br", "br"), ("gzip", "gz")] {
        let copy = PathBuf::from(format!("{}.{extension}", file.display()));
        if accepts(accepted, encoding) && copy.is_file() {
            return Some((fs::read(copy).ok()?, Some(encoding)));
        }
    }
    Some((fs::read(file).ok()?, None))
}

fn accepts(accepted: &str, encoding: &str) -> bool {
    accepted.split(',').any(|entry| {
        let (name, weight) = entry.split_once(';').unwrap_or((entry, ""));
        name.trim() == encoding && !matches!(weight.trim(), "q=0" | "q=0.0")
    })
}

#[cfg(test)]
mod tests {
    use super::{accepts, file_inside, listen};
    use std::path::Path;

    #[test]
    fn a_refused_encoding_is_not_sent() {
        assert!(accepts("gzip, deflate, br;q=0.9", "br"));
        assert!(!accepts("gzip, br;q=0", "br"));
        assert!(!accepts("", "gzip"));
    }

    #[test]
    fn a_port_in_use_is_named_with_the_next_free_one() {
        let listener = listen(0).unwrap();
        let port = listener.local_addr().unwrap().port();
        let error = listen(port).unwrap_err().to_string();
        assert!(error.contains(&format!("port {port} is in use")));
        assert!(error.contains("cargo xtask serve --port"));
    }

    #[test]
    fn no_path_leads_out_of_the_folder() {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("src")
            .canonicalize()
            .unwrap();
        assert!(file_inside(&folder, "main.rs").is_some());
        for path in [
            "../Cargo.toml",
            "../../Cargo.lock",
            "/etc/hosts",
            "toolchain",
            "nothing",
        ] {
            assert!(file_inside(&folder, path).is_none(), "{path}");
        }
    }
}
