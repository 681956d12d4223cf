//! Texts of files and tins, as the page writes them.

use softcrumb::sheet::day::Log;
use softcrumb::sheet::{SavedTin, Workspace};
use softcrumb::storage::record::{
    FormulaFile, FormulaInFile, LogFile, Photo, Record, RecordError, SavedTins,
};

pub(crate) fn write_file(formulas: &[FormulaInFile], beside: &Workspace) -> String {
    let file = FormulaFile {
        formulas: formulas.to_vec(),
        beside: beside.clone(),
        refused: Vec::new(),
    };
    file.write()
}

pub(crate) fn write_log_file(log: &Log, photos: &[Photo]) -> String {
    let file = LogFile {
        log: log.clone(),
        photos: photos.to_vec(),
        refused: Vec::new(),
    };
    file.write()
}

pub(crate) fn write_tins(tins: &[SavedTin]) -> String {
    let tins = tins.to_vec();
    SavedTins { tins }.write()
}

pub(crate) fn read_tins(text: &str) -> Result<Vec<SavedTin>, RecordError> {
    SavedTins::read(text).map(|all| all.tins)
}
