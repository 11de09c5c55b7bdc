import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { answer } from '../../../cli/page/answers.ts';
import type { DraftAnswer, PageAnswer } from '../../../cli/page/messages.ts';
import { reduce } from '../../../cli/page/reducer.ts';
import type { LessonAnswer } from '../../../cli/page/requests/lesson.ts';
import { emptyState } from '../../../cli/page/state.ts';
import type { Lesson, TaughtStep } from '../../../cli/page/views/learn/lesson.ts';
import { litSteps } from '../../../cli/page/views/learn/lit-steps.ts';
import { numberSeen, type SeenNumber } from '../../../cli/page/views/learn/number-seen.ts';
import {
  type Learning,
  type Learnt,
  movedBetween,
  restingOn,
  type ShownLesson,
} from '../../../cli/page/views/learn/own.ts';
import { restsOn } from '../../../cli/page/views/learn/rests-on.ts';
import { ruleSlider } from '../../../cli/page/views/learn/rule-slider.ts';
import { stepWords } from '../../../drafts/index.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import type { Point } from '../../../engine/geometry/point.ts';
import type { Dimension, DimensionPart } from '../../../engine/pattern/dimension.ts';
import type { PlacedLine } from '../../../engine/pattern/garment.ts';
import { stepText } from '../../../engine/pattern/step-text.ts';
import { drafted } from '../../drafts/drafted.ts';

const lady = new URL('../../../measurements/leading-lady.yaml', import.meta.url);
const body = parse(readFileSync(lady, 'utf8'));

async function answered(request: Parameters<typeof answer>[0]): Promise<PageAnswer> {
  const heard: PageAnswer[] = [];
  await answer(request, (each) => heard.push(each));
  const [only] = heard;
  if (!only) throw new Error('nothing was answered');
  return only;
}

/** The lesson of a garment, as it comes with a draft. */
async function lessonFor(garment: string): Promise<Lesson> {
  const request = { kind: 'draft', number: 1, body, garment, choices: {}, parts: ['lesson'] } as const;
  const { made } = (await answered(request)) as DraftAnswer;
  if (!made?.parts.lesson) throw new Error('no lesson');
  return made.parts.lesson;
}

const turnedLesson = async (
  turned: Readonly<Record<string, number>>,
  garment = 'skirt',
): Promise<LessonAnswer> =>
  (await answered({ kind: 'lesson', key: 'k', body, garment, choices: {}, turned })) as LessonAnswer;

const called = ({ steps }: Lesson, title: string): TaughtStep => {
  const step = steps.find((each) => each.title === title);
  if (!step) throw new Error(`no step is called ${title}`);
  return step;
};

const seenAs = (lesson: Lesson, step: TaughtStep, ground: string): SeenNumber | undefined =>
  numberSeen(
    lesson,
    step,
    step.grounds.findIndex(({ name }) => name.includes(ground)),
  );

const everybody = readdirSync(new URL('.', lady))
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => parse(readFileSync(new URL(name, lady), 'utf8')));

const did = (actions: readonly Learning[]): Learnt =>
  actions.reduce((state, what) => reduce(state, { does: 'within', view: 'learn', what }), emptyState).own
    .learn;

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);

/** How long what is marked is on the drawing: straight, along a line of a step, or along curves. */
function lengthOf(part: DimensionPart, lines: readonly PlacedLine[]): number {
  if ('from' in part) return Math.hypot(part.to.x - part.from.x, part.to.y - part.from.y);
  if ('curves' in part) return edgeLength({ name: '', curves: part.curves });
  const line = lines.find(({ on, name }) => on === part.on && name === part.name);
  if (!line) throw new Error(`no step draws ${part.name} on the ${part.on}`);
  return edgeLength(line);
}

/** The angle at a place between the ways to two others, by the rule of cosines. */
function angleBetween({ at, from, to }: Extract<Dimension, { kind: 'angle' }>): number {
  const far = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
  const [one, other, across] = [far(at, from), far(at, to), far(from, to)];
  return Math.acos((one ** 2 + other ** 2 - across ** 2) / (2 * one * other));
}

describe('a lesson', () => {
  test('says each step as the construction does, number by number', async () => {
    const { steps } = await lessonFor('dress');
    expect(steps.length).toBeGreaterThan(150);
    for (const step of drafted('dress', body).garment.steps)
      for (const units of ['mm', 'in'] as const)
        expect(
          stepWords(step, units)
            .map(({ text }) => text)
            .join(''),
        ).toBe(stepText(step, units));
    for (const { words, grounds } of steps)
      for (const { is } of words) if (typeof is === 'object') expect(grounds[is.from]).toBeDefined();
  });

  test('tells where a number came from: the tape, a choice, a rule with its source, or an earlier step', async () => {
    const lesson = await lessonFor('skirt');
    const half = called(lesson, 'Half waist');
    expect(half.grounds).toMatchObject([
      { from: 'measurement', name: 'waist girth', mm: 740, says: expect.stringMatching(/^measured\. /) },
      { from: 'choice', name: 'waistEase', mm: 30 },
    ]);
    const front = called(lesson, 'Waist of the front half');
    expect(front.grounds).toMatchObject([
      { from: 'step', step: half.number },
      {
        from: 'rule',
        rule: { id: 'K8', value: 10, unit: 'mm' },
        says: expect.stringContaining('common practice'),
      },
    ]);
  });

  test('shows a number where the draft says that it lies on the drawing', async () => {
    const lesson = await lessonFor('bodice');
    // The back neck point to waist runs down the centre back from where the lines of the drawing cross.
    const waist = called(lesson, 'Waist level');
    const down = { as: 'length', dimension: { kind: 'straight', on: 'back', to: { x: 0, y: 405 } } };
    expect(numberSeen(lesson, waist, 'outcome')).toMatchObject(down);
    expect(numberSeen(lesson, waist, 0)).toMatchObject(down);
    // A girth is no length of it, but what was found from it is.
    const across = called(lesson, 'Half across back');
    expect(seenAs(lesson, across, 'across back width')).toMatchObject({ as: 'found from it', by: across });
    expect(numberSeen(lesson, across, undefined)).toBeUndefined();
  });

  test('marks no other length for a number because that is as long', async () => {
    const lesson = await lessonFor('dress');
    // 8 mm are left above the bust level, and 8 mm the centre back takes in at the waist.
    const underarm = called(lesson, 'Underarm level');
    const above = underarm.grounds.findIndex(({ from, amount }) => from === 'rule' && amount === '8 mm');
    expect(called(lesson, 'Centre back takes in at the waist').amount).toBe('8 mm');
    expect(numberSeen(lesson, underarm, above)).toMatchObject({ as: 'found from it', by: underarm });
    // Half of the waist is 385 mm, and so is twice what a gore measures from waist to hip.
    expect(numberSeen(lesson, called(lesson, 'Half waist'), 'outcome')).toMatchObject({
      as: 'length',
      dimension: {
        kind: 'parts',
        times: 1,
        parts: [{ on: 'back' }, { on: 'back' }, { on: 'front' }, { on: 'front' }],
      },
    });
    expect(seenAs(lesson, called(lesson, 'Hip of the centre front gore'), 'centre front gore')).toMatchObject(
      { as: 'length', dimension: { of: `step ${called(lesson, 'Waist of the centre front gore').number}` } },
    );
  });

  test('says of a number that measures nothing on the drawing what it is', async () => {
    const lesson = await lessonFor('bodice');
    const elastic = called(await lessonFor('dress'), 'Hem elastic, cut');
    expect(numberSeen(await lessonFor('dress'), elastic, 'outcome')).toEqual({ as: 'no line' });
    const spread = called(lesson, 'Insert, slashed and spread');
    expect(seenAs(lesson, spread, 'slashLines')).toEqual({ as: 'plain number' });
    const gives = called(lesson, 'Back gives in under the bust');
    expect(numberSeen(lesson, gives, 'outcome')).toEqual({ as: 'nothing' });
  });

  test('marks what is found at last from a number that is no length itself', async () => {
    const lesson = await lessonFor('dress');
    const larger = called(lesson, 'Armscye longer than its depth foretells');
    const underarm = called(lesson, 'Underarm level');
    expect(numberSeen(lesson, larger, 'outcome')).toMatchObject({ by: underarm, atLast: true });
    expect(numberSeen(lesson, called(lesson, 'Half across back'), 0)).toMatchObject({ atLast: false });
  });

  test('marks a length in parts on whichever of its drawings is shown', async () => {
    const lesson = await lessonFor('dress');
    const seen = numberSeen(lesson, called(lesson, 'Half waist'), 'outcome');
    const late = numberSeen(lesson, called(lesson, 'Zip'), 'outcome');
    expect(seen).toMatchObject({ dimension: { on: 'back' } });
    expect(numberSeen(lesson, called(lesson, 'Half waist'), 'outcome', 'front')).toMatchObject({
      dimension: { on: 'front' },
    });
    expect(late).toMatchObject({ dimension: { on: 'skirt centre back', parts: [{ on: 'back' }, {}] } });
  });

  test.each(['dress', 'bodice', 'skirt', 'trial'])(
    'of the numbers of a %s only what is bought, counted or comes to nothing lies nowhere',
    async (garment) => {
      const lesson = await lessonFor(garment);
      const nowhere = lesson.steps
        .filter((step) => step.amount !== undefined)
        .filter(
          (step) =>
            !(numberSeen(lesson, step, 'outcome')?.as ?? '').match(/^(length|found from it|nothing)$/),
        );
      expect(nowhere.map(({ title }) => title)).toEqual(
        garment === 'dress' ? ['Hem elastic, finished girth', 'Hem elastic, cut'] : [],
      );
    },
  );

  test.each([
    ['dress', 'Bust dart angle'],
    ['dress', 'Front shoulder slope'],
    ['dress', 'Insert sides lean'],
    ['skirt', 'Gore seams lean out below the hip'],
    ['skirt', 'Seams of the side front gore lean out'],
  ])('marks an angle of a %s where it lies: %s', async (garment, title) => {
    const lesson = await lessonFor(garment);
    const seen = numberSeen(lesson, called(lesson, title), 'outcome');
    expect(seen).toMatchObject({ as: 'length', dimension: { kind: 'angle' } });
  });

  test.each(['dress', 'bodice', 'skirt', 'trial'])(
    'marks lengths and angles of a %s that are as long and wide as their numbers, for everybody',
    (garment) => {
      for (const each of everybody) {
        const { steps } = drafted(garment, each).garment;
        const lines = steps.flatMap(({ draws }) => draws?.lines ?? []);
        const dimensions = steps.flatMap(({ dimensions: of = [] }) => of);
        expect(dimensions.length).toBeGreaterThan(garment === 'dress' ? 120 : 45);
        for (const dimension of dimensions) {
          const there =
            dimension.kind === 'angle'
              ? angleBetween(dimension)
              : dimension.kind === 'parts'
                ? dimension.times * sumOf(dimension.parts.map((part) => lengthOf(part, lines)))
                : lengthOf(dimension, lines);
          const { name, value = 0 } = dimension.of;
          expect(Math.abs(there - Math.abs(value)), name).toBeLessThan(1e-3);
        }
      }
    },
  );

  test('knows what rests on a step, down the whole way', async () => {
    const lesson = await lessonFor('skirt');
    const half = called(lesson, 'Half waist');
    const resting = restingOn(half.number, lesson);
    expect(resting.has(called(lesson, 'Waist of the front half').number)).toBe(true);
    expect(resting.has(called(lesson, 'Waist of the side front gore').number)).toBe(true);
    const shown = { lesson, plain: lesson, turned: {}, moved: movedBetween(lesson, lesson) };
    expect(litSteps(shown, half, 'outcome', true)).toEqual(resting);
    expect(litSteps(shown, half, undefined, false).size).toBe(0);
  });
});

describe('a turned rule', () => {
  test('moves what rests on it, and nothing else', async () => {
    const kept = await lessonFor('skirt');
    const { lesson } = await turnedLesson({ K8: 14 });
    if (!lesson) throw new Error('no lesson');
    const shown: ShownLesson = {
      lesson,
      plain: kept,
      turned: { K8: 14 },
      moved: movedBetween(kept, lesson),
    };
    const moved = shown.moved.steps.map(({ step, before }) => [step.title, before, step.amount]);
    expect(moved).toContainEqual(['Waist of the front half', '197.5 mm', '199.5 mm']);
    expect(moved.map(([title]) => title)).not.toContain('Half waist');
    expect(shown.moved.drawings.size).toBe(4);
    const front = called(lesson, 'Waist of the front half');
    expect(litSteps(shown, front, 1, true)).toEqual(shown.moved.drawn);
    // And it is as it was again, for everybody.
    expect(await lessonFor('skirt')).toEqual(kept);
  });

  test('to what cannot be drawn is refused in words', async () => {
    const { lesson, issues } = await turnedLesson({ K9: 3 });
    expect(lesson).toBeUndefined();
    expect(issues[0]?.severity).toBe('error');
  });

  test('is turned back, and what was drawn with it is let go', () => {
    const turned = did([
      { does: 'turn rule', id: 'K8', value: 14 },
      { does: 'turn rule', id: 'K2', value: 5 },
    ]);
    expect(turned.turned).toEqual({ K8: 14, K2: 5 });
    expect(
      did([
        { does: 'turn rule', id: 'K8', value: 14 },
        { does: 'turn rule', id: 'K8', value: undefined },
      ]).turned,
    ).toEqual({});
    expect(did([{ does: 'turn rule', id: 'K8', value: 14 }, { does: 'turn no rule' }])).toMatchObject({
      turned: {},
      lesson: undefined,
    });
  });

  test.each([
    [0.05, 'ratio'],
    [4, 'mm'],
    [20, 'mm'],
    [-2, 'degrees'],
    [0.9, 'ratio'],
    [0, 'mm'],
    [3.175, 'mm'],
  ] as const)('of %d has a slider that it stands on, with places to either side', (own, unit) => {
    const { min, max, step } = ruleSlider(own, unit);
    expect(min).toBeLessThanOrEqual(own);
    expect(max).toBeGreaterThan(own);
    expect((max - min) / step).toBeGreaterThan(20);
    expect((max - min) / step).toBeLessThan(1200);
    if (unit === 'ratio') expect(max).toBeLessThanOrEqual(1);
  });
});

describe('stepping', () => {
  test('lets go of what was pointed at, and never goes before the first', () => {
    const pointed = did([
      { does: 'go to step', step: 7 },
      { does: 'point at', pointed: 'outcome' },
    ]);
    expect(pointed).toMatchObject({ step: 7, pointed: 'outcome' });
    expect(
      did([
        { does: 'go to step', step: 7 },
        { does: 'point at', pointed: 1 },
        { does: 'go to step', step: -3 },
      ]),
    ).toMatchObject({ step: 1, pointed: undefined });
  });
});

describe('what a step rests on', () => {
  test.each([
    ['measurement', 'It comes from her measurements.'],
    ['construction', 'It follows from what is drawn already.'],
    ['F27, common practice, no source', 'It rests on rule F27: common practice, no source.'],
    ['F5, F7, F8, F9, from memory', 'It rests on rules F5, F7, F8 and F9: from memory.'],
    [
      'F19, Bunka draft shares; F20, common practice, no source',
      'It rests on rule F19: Bunka draft shares; rule F20: common practice, no source.',
    ],
    ['sector of a cone', 'It rests on this: sector of a cone.'],
  ])('is said in a sentence: %s', (source, sentence) => {
    expect(restsOn(source)).toBe(sentence);
  });
});
