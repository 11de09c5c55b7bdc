import type { Command, Option } from 'commander';
import type { Alteration, LengthOrShare, PlaceOnEdge } from '../../engine/shaping/alteration.ts';
import type { Slashing } from '../../engine/shaping/slash-lines.ts';
import { unusable } from '../input/unusable.ts';

/** What was said of one alteration on the command line. */
export interface StepOptions {
  readonly along?: readonly [string, string];
  readonly between?: readonly [string, string];
  readonly lines?: number;
  readonly hinge?: string;
  readonly spread?: number;
  readonly gather?: number;
  readonly cupFrom?: string;
  readonly cupTo?: string;
  readonly whole?: true;
  readonly pivotDart?: PlaceOnEdge;
  readonly dart?: string;
  readonly share?: number;
  readonly short?: number;
  readonly lengthen?: number;
  readonly shorten?: number;
  readonly at?: LengthOrShare;
  readonly moveNotch?: readonly [string, PlaceOnEdge];
  readonly mirror?: string;
}

/** Slash lines, and the share of a dart that is turned, where nothing is said. */
export const USUAL = { lines: 6, share: 1 } as const;

/** The options that each ask for an alteration, of which one step has one. */
const asking = [
  'spread',
  'gather',
  'cupFrom',
  'pivotDart',
  'lengthen',
  'shorten',
  'moveNotch',
  'mirror',
] as const satisfies readonly (keyof StepOptions)[];

/**
 * Notes the altering options of a command in the order in which they are written, a step up to each `then`. Call what
 * it answers once the line was read.
 */
export function stepsOf(
  command: Command,
  altering: readonly Option[],
  then: Option,
): () => readonly StepOptions[] {
  const steps: Record<string, unknown>[] = [{}];
  for (const option of altering)
    command.on(`option:${option.name()}`, () => {
      const step = steps.at(-1) ?? {};
      const name = option.attributeName();
      if (name in step)
        throw unusable(
          'said-twice',
          `--${option.name()}`,
          `--${option.name()} stands twice in one alteration. Part two alterations with --then.`,
        );
      step[name] = command.getOptionValue(name);
    });
  command.on(`option:${then.name()}`, () => {
    steps.push({});
  });
  return () => {
    for (const step of steps) refuseTwo(step, altering);
    const empty = steps.findIndex((step) => steps.length > 1 && Object.keys(step).length === 0);
    if (empty >= 0)
      throw unusable(
        'then-nothing',
        '--then',
        `Alteration ${empty + 1} is missing: --then stands between two.`,
      );
    return steps;
  };
}

function refuseTwo(step: StepOptions, altering: readonly Option[]): void {
  const [one, other] = altering.filter(
    (option) => asking.some((name) => name === option.attributeName()) && option.attributeName() in step,
  );
  if (one && other)
    throw unusable(
      'two-at-once',
      `--${other.name()}`,
      `--${one.name()} cannot be used with --${other.name()} in one alteration. Part two alterations with --then.`,
    );
}

/** What the altered edge is sewn to: which edge it is, where she says, and how long the partner is, mm. */
export interface SewnTo {
  readonly seam?: string | undefined;
  readonly partner?: number | undefined;
}

/** A step as data; nothing where it asks for no alteration. */
export function alterationOf(step: StepOptions, sewn: SewnTo): Alteration | undefined {
  const { spread, gather, cupFrom, cupTo, pivotDart, dart, short, moveNotch } = step;
  if (spread !== undefined) return { kind: 'spread', slashing: slashingOf(step), amount: spread };
  if (cupFrom !== undefined || cupTo !== undefined) {
    if (cupFrom === undefined || cupTo === undefined)
      throw unusable('cup-missing', '--cup-to', 'Say both cups: --cup-from B --cup-to D.');
    const whole = step.whole ?? false;
    return { kind: 'another cup', slashing: slashingOf(step), from: cupFrom, to: cupTo, whole };
  }
  if (gather !== undefined)
    return {
      kind: 'gather',
      slashing: slashingOf(step),
      ratio: gather,
      ...(sewn.seam !== undefined && { edge: sewn.seam }),
      ...(sewn.partner !== undefined && { seam: sewn.partner }),
    };
  if (pivotDart)
    return {
      kind: 'pivot dart',
      to: pivotDart,
      share: step.share ?? USUAL.share,
      ...(dart !== undefined && { dart }),
      ...(short !== undefined && { short }),
    };
  if (step.lengthen !== undefined || step.shorten !== undefined)
    return { kind: 'lengthen', amount: step.lengthen ?? -(step.shorten ?? 0), at: levelOf(step) };
  if (moveNotch) return { kind: 'move notch', notch: moveNotch[0], to: moveNotch[1] };
  return step.mirror === undefined ? undefined : { kind: 'mirror', edge: step.mirror };
}

/** Where the slash lines run. */
function slashingOf({ along, lines = USUAL.lines, hinge, between }: StepOptions): Slashing {
  if (!along)
    throw unusable(
      'along-missing',
      '--along',
      'Say which two edges the slash lines run between: --along top..hem.',
    );
  const [from, to] = along;
  return { from, to, lines, ...(hinge !== undefined && { hinge }), ...(between && { between }) };
}

function levelOf({ at }: StepOptions): LengthOrShare {
  if (!at)
    throw unusable('level-missing', '--at', 'Say where to cut across, below the top: --at 120 or --at 40%.');
  return at;
}
