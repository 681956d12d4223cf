//! Writes a zip archive of a folder.

use anyhow::{Context, Result};
use std::fs::{self, File};
use std::io::Write as _;
use std::path::{Path, PathBuf};
use zip::write::SimpleFileOptions;

/// Archives all files below `folder` in `zip`, without dates: the same files give the same archive.
pub(crate) fn write(folder: &Path, zip: &Path) -> Result<()> {
    let mut files = Vec::new();
    collect(folder, &mut files)?;
    files.sort();
    let mut writer = zip::ZipWriter::new(
        File::create(zip).with_context(|| format!("{} cannot be written", zip.display()))?,
    );
    let options = SimpleFileOptions::default().last_modified_time(zip::DateTime::default());
    for file in files {
        let name = file
            .strip_prefix(folder)?
            .to_string_lossy()
            .replace('\\', "/");
        writer.start_file(name, options)?;
        writer.write_all(&fs::read(&file)?)?;
    }
    writer.finish()?;
    Ok(())
}

fn collect(folder: &Path, files: &mut Vec<PathBuf>) -> Result<()> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            collect(&path, files)?;
        } else {
            files.push(path);
        }
    }
    Ok(())
}
