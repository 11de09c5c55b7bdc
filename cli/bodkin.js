#!/usr/bin/env node
import { existsSync } from 'node:fs';
import './v8-settings.js';

const program = new URL('../.dist/main.mjs', import.meta.url);

if (existsSync(program)) await import(program.href);
else {
  process.stderr.write(
    'bodkin is not built yet: run “npm run build”, or “npm run -s bodkin --” instead of it.\n',
  );
  process.exitCode = 70;
}
