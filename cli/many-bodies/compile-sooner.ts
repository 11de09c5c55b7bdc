import { setFlagsFromString } from 'node:v8';

/** Garments after which more are likely to come than compiling their drafts takes, and what runs is known. */
const MANY = 100;

/** Hears of garments as they are drafted; once they are many, V8 compiles sooner. */
export function soonerOnceMany(): (more: number) => void {
  let count = 0;
  return (more) => {
    if (count < MANY && count + more >= MANY) compileSooner();
    count += more;
  };
}

/**
 * Lets V8 compile for speed at its own pace, which is too soon where one garment is drafted (`cli/v8-settings.js`), and long
 * functions no later than short ones: a draft has hundreds that run once a body, and a third of the time went into them
 * as they were first compiled, for thousands of bodies. It is work of seconds for threads beside; a dress then takes a tenth
 * less of its own. Holds for all threads, those that run already too.
 */
export function compileSooner(): void {
  setFlagsFromString('--interrupt-budget=66000');
  setFlagsFromString('--bytecode-size-allowance-per-tick=1500');
}
