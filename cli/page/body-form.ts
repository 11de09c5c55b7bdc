import {
  cupLetters,
  type MeasurementName,
  measurementNames,
  type Unit,
  unitNames,
} from '../../drafts/index.ts';

/** Data of a file of measurements, as it was read or is to be written. */
export type BodyFields = Readonly<Record<string, unknown>>;

/** One person's measurements as they stand in the form: texts as they were typed, empty where nothing was. */
export interface BodyForm {
  readonly name: string;
  readonly age: string;
  /** Empty where a file did not say it. */
  readonly units: Unit | '';
  readonly cup: string;
  readonly sizes: Readonly<Partial<Record<MeasurementName, string>>>;
  /** What was measured twice, and stays. */
  readonly sure: readonly MeasurementName[];
  readonly reconcile: boolean;
  /** What else a file held: a fitting, and what the form has no field for. It is kept, drafted and written again. */
  readonly rest: Readonly<Record<string, unknown>>;
}

export const emptyForm: BodyForm = {
  name: '',
  age: '',
  units: 'cm',
  cup: '',
  sizes: {},
  sure: [],
  reconcile: false,
  rest: {},
};

/** The form as the data of a file, in the order in which such files are written. */
export function bodyData(form: BodyForm): BodyFields {
  const typed = {
    name: form.name.trim() || undefined,
    age: written(form.age),
    units: form.units || undefined,
    ...Object.fromEntries(measurementNames.map((name) => [name, written(form.sizes[name] ?? '')])),
    cup: form.cup || undefined,
    sure: form.sure.length > 0 ? form.sure : undefined,
    reconcile: form.reconcile || undefined,
  };
  const said = Object.fromEntries(Object.entries(typed).filter(([, value]) => value !== undefined));
  return { ...said, ...Object.fromEntries(Object.entries(form.rest).filter(([name]) => !(name in said))) };
}

/** A text as a file holds it: a number where it is one, for a file has no quotes round them. */
function written(text: string): number | string | undefined {
  const plain = text.trim();
  if (plain === '') return undefined;
  return /^\d{1,6}(\.\d{1,9})?$/.test(plain) ? Number(plain) : plain;
}

/** The form that shows the data of a file; what is not as the form could have it is kept, for its reader to judge. */
export function formFrom(data: BodyFields): BodyForm {
  const rest: Record<string, unknown> = { ...data };
  const take = <Value>(name: string, read: (value: unknown) => Value | undefined): Value | undefined => {
    const value = Object.hasOwn(data, name) ? read(data[name]) : undefined;
    if (value !== undefined) delete rest[name];
    return value;
  };
  const sizes = measurementNames.flatMap((name) => {
    const text = take(name, asText);
    return text === undefined ? [] : [[name, text] as const];
  });
  return {
    name: take('name', asText) ?? '',
    age: take('age', asText) ?? '',
    units: take('units', (value) => unitNames.find((unit) => unit === value)) ?? '',
    cup: take('cup', (value) => cupLetters.find((letter) => letter === value)) ?? '',
    sizes: Object.fromEntries(sizes),
    sure: take('sure', asNames) ?? [],
    reconcile: take('reconcile', (value) => (typeof value === 'boolean' ? value : undefined)) ?? false,
    rest,
  };
}

const asText = (value: unknown): string | undefined =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : undefined;

function asNames(value: unknown): readonly MeasurementName[] | undefined {
  if (!Array.isArray(value)) return undefined;
  const names = measurementNames.filter((name) => value.includes(name));
  return names.length === value.length ? names : undefined;
}
