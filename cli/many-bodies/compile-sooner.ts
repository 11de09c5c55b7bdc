import { setFlagsFromString } from 'node:v8';

/** Garments that a thread must have before it for `compileSooner` to pay: it costs 3 s of a processor, and each gives back 0.8 ms of them. */
const MANY = 4000;

/**
 * Hears how many garments more were drafted by all of so many threads, and what share of all that makes, 0 where nobody knows: then as
 * many are to come as there were. Once so many are to come that it pays, V8 compiles sooner.
 */
export function soonerForMany(
  threads: number,
  sooner = compileSooner,
): (more: number, share: number) => void {
  let drafted = 0;
  let isSooner = false;
  return (more, share) => {
    drafted += more;
    const toCome = share > 0 ? drafted / share - drafted : drafted;
    if (isSooner || toCome < MANY * threads) return;
    isSooner = true;
    sooner();
  };
}

/**
 * Lets V8 compile for speed at its own pace, which is too soon where one garment is drafted (`cli/v8-settings.js`), and long
 * functions no later than short ones: a draft has hundreds that run once a body, and a third of the time went into them
 * as they were first compiled, for thousands of bodies. A dress then takes a tenth less of its thread. Holds for all
 * threads, those that run already too. Later ones of V8 know these settings by other words, and have one pace for short and long.
 */
export function compileSooner(): void {
  if (!process.versions.v8.startsWith('11.')) return;
  setFlagsFromString('--interrupt-budget=66000');
  setFlagsFromString('--bytecode-size-allowance-per-tick=1500');
}
