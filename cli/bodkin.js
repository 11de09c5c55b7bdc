#!/usr/bin/env node
import { existsSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';

/*
 * A garment is drafted in half a second, in which V8 would compile for speed, on threads beside, what then hardly runs: that
 * takes as long as the draft. So code must have run seven times as much as is usual before it is compiled so; what
 * runs for longer is as fast as ever. V8 knows the word at least from its version 11 to 14 (Node.js 20 to 26).
 */
if (Number.parseInt(process.versions.v8, 10) <= 14) setFlagsFromString('--interrupt-budget=500000');

const program = new URL('../.dist/main.mjs', import.meta.url);

if (existsSync(program)) await import(program.href);
else {
  process.stderr.write(
    'bodkin is not built yet: run “npm run build”, or “npm run -s bodkin --” instead of it.\n',
  );
  process.exitCode = 70;
}
