import { installed } from '../installed.ts';

/** Where the machine's Chromium is. */
export const chromium = (): string | undefined =>
  installed(['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'], 'chromium');
