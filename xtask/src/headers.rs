//! Response headers of the server, and the content security policy, which the page repeats.

/// Allows no other origin, and no inline script or style.
pub(crate) const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'";

/// Headers of every response. `frame-ancestors` works as a header only.
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

/// Files named by their content are cached for a year; all others are requested again.
pub(crate) const fn cache_control(hashed: bool) -> &'static str {
    if hashed {
        "public, max-age=31536000, immutable"
    } else {
        "no-cache"
    }
}

/// The media type, by the file's extension.
pub(crate) fn media_type(path: &str) -> &'static str {
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
