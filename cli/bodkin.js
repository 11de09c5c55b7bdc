#!/usr/bin/env node
import { existsSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';

/*
 * A garment is drafted in half a second, in which V8 would compile for speed, on threads beside, what then hardly runs: that
 * takes as long as the draft. So code must have run seven times as much as is usual before it is compiled so; what
 * runs for longer is as fast as ever. Later ones of V8 wait longer by themselves, and know other words.
 */
if (process.versions.v8.startsWith('11.')) setFlagsFromString('--interrupt-budget=500000');

const program = new URL('../.dist/main.mjs', import.meta.url);

if (existsSync(program)) await import(program.href);
else {
  process.stderr.write(
    'bodkin is not built yet: run “npm run build”, or “npm run -s bodkin --” instead of it.\n',
  );
  process.exitCode = 70;
}
