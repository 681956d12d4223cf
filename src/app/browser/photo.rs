//! Photos: a picture file drawn down, on the device, to a small one.

use js_sys::Promise;
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{CanvasRenderingContext2d, File, HtmlCanvasElement, ImageBitmap};

/// Why a file did not become a photo.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PhotoError {
    /// It is larger than what is opened; so many bytes.
    TooLarge(f64),
    /// Its media type is not that of a picture.
    NotAPicture,
    /// The browser can make no picture of it.
    Broken,
}

/// The most bytes of a file that is opened: a large phone's photo.
pub const MOST: f64 = 30_000_000.0;

/// How good the picture is, and how long its longer side, px, until it is small enough.
const TRIED: [(f64, f64); 5] = [
    (0.8, 480.0),
    (0.6, 480.0),
    (0.45, 480.0),
    (0.4, 360.0),
    (0.3, 240.0),
];

/// A picture as the text of a `data:` address of at most `longest` characters. What the file says
/// of place and camera is not in it.
///
/// # Errors
/// [`PhotoError`].
pub async fn small(file: File, longest: usize) -> Result<String, PhotoError> {
    if file.size() > MOST {
        return Err(PhotoError::TooLarge(file.size()));
    }
    if !file.type_().starts_with("image/") {
        return Err(PhotoError::NotAPicture);
    }
    let picture = opened(&file).await.ok_or(PhotoError::Broken)?;
    let mut found = Err(PhotoError::Broken);
    for (quality, side) in TRIED {
        let text = drawn(&picture, quality, side).map_err(|_| PhotoError::Broken)?;
        if text.len() <= longest {
            found = Ok(text);
            break;
        }
    }
    picture.close();
    found
}

async fn opened(file: &File) -> Option<ImageBitmap> {
    let asked: Promise = window().create_image_bitmap_with_blob(file).ok()?;
    JsFuture::from(asked).await.ok()?.dyn_into().ok()
}

/// On white, because what is clear would come out black.
fn drawn(picture: &ImageBitmap, quality: f64, side: f64) -> Result<String, JsValue> {
    let (wide, high) = (f64::from(picture.width()), f64::from(picture.height()));
    let scale = (side / wide.max(high)).min(1.0);
    let canvas: HtmlCanvasElement = document().create_element("canvas")?.unchecked_into();
    canvas.set_width(pixels(wide * scale));
    canvas.set_height(pixels(high * scale));
    let context = canvas.get_context("2d")?.ok_or(JsValue::NULL)?;
    let context: CanvasRenderingContext2d = context.unchecked_into();
    let (wide, high) = (f64::from(canvas.width()), f64::from(canvas.height()));
    context.set_fill_style_str("#fff");
    context.fill_rect(0.0, 0.0, wide, high);
    context.draw_image_with_image_bitmap_and_dw_and_dh(picture, 0.0, 0.0, wide, high)?;
    canvas.to_data_url_with_type_and_encoder_options("image/jpeg", &quality.into())
}

/// Whole pixels, at least one.
fn pixels(size: f64) -> u32 {
    crate::engine::numerics::whole(size.max(1.0))
}
