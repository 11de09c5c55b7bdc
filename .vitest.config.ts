import { defineConfig } from 'vitest/config';

/** Nothing under test keeps a state between calls, so the files share what they import: it halves the time. */
export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['.vitest.setup.ts'],
    testTimeout: 60_000,
    // What is waited for by itself is waited for for a second, which is soon over where others work too.
    expect: { poll: { timeout: 20_000 } },
    isolate: false,
    // By itself one core is left free: on two it would run on one.
    maxWorkers: '100%',
  },
});
