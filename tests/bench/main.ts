import { parseArgs } from 'node:util';
import { benchAgainst } from './against.ts';
import { arcLengthBench } from './arc-length.ts';
import { benchBodies } from './bodies.ts';
import { benchGarment } from './garment.ts';
import { benchGrade } from './grade.ts';
import { offsetBench } from './offset.ts';
import { benchPinned } from './pinned.ts';
import { benchPrint } from './print.ts';
import { benchSheet } from './sheet.ts';
import { benchSolve } from './solve.ts';
import { benchTrial } from './trial.ts';
import { benchWear } from './wear.ts';

/** Every topic that is measured; each returns its table as text. */
const topics: readonly (() => string | Promise<string>)[] = [
  arcLengthBench,
  offsetBench,
  benchSolve,
  benchGarment,
  benchTrial,
  benchGrade,
  benchSheet,
  benchPrint,
  benchWear,
  benchBodies,
  benchPinned,
];

const { against } = parseArgs({ options: { against: { type: 'string' } } }).values;

if (against !== undefined) console.log(await benchAgainst(against));
else for (const topic of topics) console.log(`${await topic()}\n`);
