// A person at the page, whose interactions are counted: a tap, a key that is not typing into a field, a field filled.
import { expect, type Locator, type Page } from "@playwright/test";

export class Person {
  count = 0;
  readonly page: Page;
  /// By the keyboard alone: what would be tapped is reached and pressed, and only that.
  readonly keys: boolean;

  constructor(page: Page, keys: boolean) {
    this.page = page;
    this.keys = keys;
  }

  /// One tap; by the keyboard the focus is put there and Enter pressed. Getting there by Tab is not counted: how many that
  /// takes hangs on the browser (arrow keys, headings); that it can be got to is what focus() holds.
  async tap(what: Locator): Promise<void> {
    await expect(what).toBeVisible();
    if (!this.keys) {
      this.count += 1;
      await what.click();
      return;
    }
    await this.reach(what);
    await this.press("Enter");
  }

  async press(key: string): Promise<void> {
    this.count += 1;
    await this.page.keyboard.press(key);
  }

  async fill(what: Locator, text: string): Promise<void> {
    this.count += 1;
    if (!this.keys) {
      await what.fill(text);
      return;
    }
    await this.reach(what);
    await this.page.keyboard.press("Control+a");
    await this.page.keyboard.type(text);
  }

  async choose(what: Locator, label: string): Promise<void> {
    this.count += 1;
    if (this.keys) await this.reach(what);
    await what.selectOption({ label });
  }

  private async reach(what: Locator): Promise<void> {
    await what.scrollIntoViewIfNeeded();
    await what.focus();
    await expect(what).toBeFocused();
    await expect(what).toBeEnabled();
    const stop = await what.evaluate((one) => (one as HTMLElement).tabIndex);
    expect(stop, "it is no stop of the Tab key").toBeGreaterThanOrEqual(0);
  }
}
