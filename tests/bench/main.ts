import { arcLengthBench } from './arc-length.ts';
import { offsetBench } from './offset.ts';

/** Every topic that is measured; each returns its table as text. */
const topics: readonly (() => string | Promise<string>)[] = [arcLengthBench, offsetBench];

for (const topic of topics) console.log(`${await topic()}\n`);
