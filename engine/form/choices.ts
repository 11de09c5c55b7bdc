/** Something that no measurement says of a body, with what is likely and where that is known from. */
export interface FormChoice {
  readonly says: string;
  readonly unit: 'mm' | 'degrees' | 'share';
  /** What is most likely where nothing else speaks; missing where it follows from the body. */
  readonly usual?: number;
  /** One standard deviation of what women differ by. */
  readonly spread: number;
  readonly least: number;
  readonly most: number;
  readonly source: string;
}

const memory = 'judgement, no source read';

/**
 * What measurements leave open. Those with a spread above nought are let go to where the measurements agree best with
 * what is likely, unless they are chosen; the others are as they are said here.
 */
export const formChoices = {
  backHollow: {
    says: 'how far the waist at the back lies in front of a plumb line that touches the seat',
    unit: 'mm',
    usual: 30,
    spread: 8,
    least: 0,
    most: 80,
    source: memory,
  },
  lean: {
    says: 'how far the shoulder blades stand in front of the plumb line that touches the seat',
    unit: 'mm',
    usual: 4,
    spread: 10,
    least: -60,
    most: 60,
    source: memory,
  },
  napeForward: {
    says: 'how far the back neck point lies in front of the shoulder blades',
    unit: 'mm',
    usual: 36,
    spread: 9,
    least: 0,
    most: 110,
    source: memory,
  },
  sideNeckBelow: {
    says: 'how far the neck shoulder point lies below the back neck point',
    unit: 'mm',
    usual: 11.5,
    spread: 5,
    least: -15,
    most: 40,
    source: 'heights of the neck, means of 2,208 women (NATICK/TR-89/044, 1988); spread judged',
  },
  frontNeckBelow: {
    says: 'how far the front neck point lies below the back neck point',
    unit: 'mm',
    spread: 0,
    least: 20,
    most: 120,
    source: 'survey of 1,986 women, 2012',
  },
  shoulderForward: {
    says: 'how far the shoulder point lies in front of the neck shoulder point',
    unit: 'mm',
    usual: 10,
    spread: 0,
    least: -30,
    most: 50,
    source: memory,
  },
  ribDepth: {
    says: 'depth of the ribs at the under-bust by their breadth',
    unit: 'share',
    usual: 0.79,
    spread: 0.04,
    least: 0.55,
    most: 1.05,
    source: memory,
  },
  underBustBelow: {
    says: 'how far the lower edge of the breast lies below the bust point',
    unit: 'mm',
    spread: 0,
    least: 30,
    most: 150,
    source: `grows with the cup, 65 to 95 mm; ${memory}`,
  },
  armRise: {
    says: 'how far the arms are raised sideways from where they hang',
    unit: 'degrees',
    usual: 0,
    spread: 0,
    least: 0,
    most: 45,
    source: 'as you choose; the shoulder does not rise with them',
  },
} as const satisfies Readonly<Record<string, FormChoice>>;

export type FormChoiceName = keyof typeof formChoices;

export const formChoiceNames = Object.keys(formChoices) as readonly FormChoiceName[];

/** What is chosen of a wearer's posture and build; everything else is what is likely. */
export type Posture = Readonly<Partial<Record<FormChoiceName, number>>>;
