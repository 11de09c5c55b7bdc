import { writeFileSync } from 'node:fs';
import { bodyJsonSchema } from '../../../engine/body/body-file.ts';

/** Publishes the JSON Schema of the reader: `npx tsx tests/engine/body/write-schema.ts && npm run fix`. */
const file = new URL('../../../measurements/body.schema.json', import.meta.url);
writeFileSync(file, `${JSON.stringify(bodyJsonSchema(), null, 2)}\n`);
