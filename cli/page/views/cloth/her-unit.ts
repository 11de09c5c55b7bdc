import { type ClothTexts, usualCloth } from '../../../lay/cloth-asked.ts';

/** What stands for a figure that nothing is typed of, as it is shown. */
export const usualFigures = (inches: boolean) => ({
  width: inches ? '54' : '1400',
  selvedge: inches ? `${usualCloth.selvedge} mm` : usualCloth.selvedge,
  gap: usualCloth.gap,
  shrink: usualCloth.shrink,
  stripe: usualCloth.stripe,
  stripeAlong: usualCloth.stripeAlong,
});

/** The cloth as the command line is told it: what was typed with its unit behind it, and the usual where nothing was. */
export function clothAsked(typed: ClothTexts, inches: boolean): ClothTexts {
  const usual = usualFigures(inches);
  const said = (name: 'width' | 'selvedge' | 'gap' | 'stripe' | 'stripeAlong'): string => {
    const text = typed[name].trim() || usual[name];
    return inches && !/[a-z"″]/i.test(text) ? `${text} in` : text;
  };
  return {
    ...typed,
    width: said('width'),
    selvedge: said('selvedge'),
    gap: said('gap'),
    stripe: said('stripe'),
    stripeAlong: said('stripeAlong'),
    shrink: typed.shrink.trim() || usual.shrink,
  };
}
