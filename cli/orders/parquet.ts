import { open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import type { OrderResult } from '../results/orders.ts';

/** Rows written at once: enough to pack well, few enough to hold. */
const groupSize = 20_000;

interface Column {
  readonly name: string;
  readonly type: 'STRING' | 'BOOLEAN' | 'INT32' | 'DOUBLE';
  readonly of: (result: OrderResult) => string | boolean | number | null;
}

/** The columns: a result in figures that can be counted and compared, its issues by their codes. */
const columns: readonly Column[] = [
  { name: 'id', type: 'STRING', of: ({ id }) => id ?? '' },
  { name: 'garment', type: 'STRING', of: ({ garment }) => garment ?? '' },
  { name: 'drafted', type: 'BOOLEAN', of: ({ drafted }) => drafted },
  { name: 'ok', type: 'BOOLEAN', of: ({ ok }) => ok },
  { name: 'errors', type: 'INT32', of: counted('error') },
  { name: 'warnings', type: 'INT32', of: counted('warning') },
  { name: 'notes', type: 'INT32', of: counted('note') },
  {
    name: 'codes',
    type: 'STRING',
    of: ({ issues }) => [...new Set(issues.map(({ code }) => code))].join(' '),
  },
  { name: 'worst_seam_mm', type: 'DOUBLE', of: ({ worst }) => worst.seam },
  { name: 'worst_join_degrees', type: 'DOUBLE', of: ({ worst }) => worst.join },
  { name: 'worst_girth_mm', type: 'DOUBLE', of: ({ worst }) => worst.girth },
  { name: 'files', type: 'INT32', of: ({ files }) => files.length },
];

function counted(of: 'error' | 'warning' | 'note') {
  return ({ issues }: OrderResult) => issues.filter(({ severity }) => severity === of).length;
}

/** A table of results that is being written. */
export interface ParquetTable {
  readonly add: (result: OrderResult) => void;
  /** Ends the file, which takes its name only now. */
  readonly end: () => Promise<void>;
  /** Takes away what was written. */
  readonly drop: () => Promise<void>;
}

/** A Parquet file of results, a group of rows at a time. */
export async function parquetTable(path: string): Promise<ParquetTable> {
  // Loaded here because hardly anybody asks for it.
  const { fileWriter, ParquetWriter } = await import('hyparquet-writer');
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  const schema = [
    { name: 'root', num_children: columns.length },
    ...columns.map(({ name, type }) => ({
      name,
      ...(type === 'STRING' ? ({ type: 'BYTE_ARRAY', converted_type: 'UTF8' } as const) : { type }),
      repetition_type: 'OPTIONAL' as const,
    })),
  ];
  const writer = new ParquetWriter({ writer: fileWriter(beside), schema, createdBy: 'bodkin' });
  let rows: OrderResult[] = [];
  const flush = async (): Promise<void> => {
    if (rows.length === 0) return;
    const columnData = columns.map(({ name, of }) => ({ name, data: rows.map(of) }));
    rows = [];
    await writer.write({ columnData, rowGroupSize: groupSize });
  };
  let written = Promise.resolve();
  return {
    add: (result) => {
      rows.push(result);
      if (rows.length >= groupSize) written = written.then(flush);
    },
    end: async () => {
      await written.then(flush);
      await writer.finish();
      const file = await open(beside, 'r+');
      await file.sync().finally(() => file.close());
      await rename(beside, path);
    },
    drop: () => rm(beside, { force: true }),
  };
}
