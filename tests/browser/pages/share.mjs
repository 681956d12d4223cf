//! Handing out and taking in: the link, the files.

import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export class Share {
  /// `app`: the page around it (app_page.mjs), on which “Share” is opened.
  constructor(app) {
    this.app = app;
    this.dialog = app.dialog;
    this.said = app.dialog.getByRole('status').filter({ hasText: /\S/ });
  }

  async open() {
    await this.app.openTool('Share');
    return this;
  }

  /// The link as shown.
  link() {
    return this.dialog.getByRole('textbox', { name: /^A link/ }).inputValue();
  }

  /// What a button saves: the file's name and text.
  async save(button) {
    const [download] = await Promise.all([
      this.app.page.waitForEvent('download'),
      this.dialog.getByRole('button', { name: button, exact: true }).click(),
    ]);
    return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
  }

  /// Opens a file with this text; gives what is said of it.
  async take(text, name = 'formulas.json') {
    // From the disk, as a visitor's file is: 50 MB would take too long through the driver.
    const file = join(mkdtempSync(join(tmpdir(), 'softcrumb-')), name);
    writeFileSync(file, text);
    await this.dialog.getByLabel('Open a file of formulas').setInputFiles(file);
    await this.said.getByRole('paragraph').first().waitFor();
    return this.said.innerText();
  }
}
