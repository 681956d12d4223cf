//! What the server says beside each file, and the policy the page itself repeats.

/// Nothing from elsewhere, no script or style in the page's text.
pub(crate) const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'";

/// Headers that every answer carries. Frames can be ruled out by a header only.
pub(crate) fn always() -> Vec<(&'static str, String)> {
    vec![
        (
            "Content-Security-Policy",
            format!("{POLICY}; frame-ancestors 'none'"),
        ),
        ("X-Content-Type-Options", "nosniff".to_owned()),
        ("Referrer-Policy", "no-referrer".to_owned()),
        ("Cross-Origin-Opener-Policy", "same-origin".to_owned()),
        (
            "Permissions-Policy",
            "camera=(), geolocation=(), microphone=(), payment=(), usb=()".to_owned(),
        ),
        ("Vary", "Accept-Encoding".to_owned()),
    ]
}

/// A file whose name carries its content is kept for a year; any other is asked for again.
pub(crate) const fn caching(hashed: bool) -> &'static str {
    if hashed {
        "public, max-age=31536000, immutable"
    } else {
        "no-cache"
    }
}

/// The kind of a file, by the end of its name.
pub(crate) fn kind(path: &str) -> &'static str {
    match path.rsplit('.').next().unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "wasm" => "application/wasm",
        "webmanifest" => "application/manifest+json",
        "json" => "application/json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}
