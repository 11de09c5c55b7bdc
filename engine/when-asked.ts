/**
 * What `make` makes, made when it is first asked for and kept: a draft costs nothing for what nobody reads of it.
 */
export function whenAsked<Made>(make: () => Made): () => Made {
  let made: { readonly value: Made } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** How the fields of an object are made that are made when asked for. */
type Makers<Fields> = { readonly [Name in keyof Fields]: () => Fields[Name] };

/**
 * Under this name an object keeps, unseen, how its fields are made. A weak map beside the objects would do as well, but V8 takes
 * whatever such a map holds for needed when it collects young garbage, and so every draft was carried over to the old.
 */
const makersIn = Symbol('makers');

type Kept = Readonly<Record<string, () => unknown>>;

interface WithMakers {
  readonly [makersIn]?: Kept;
}

/** For each name the one getter of all objects: V8 looks every field up in an object whose getters are its own (Node 20). */
const getters = new Map<string, PropertyDescriptor>();

/**
 * The same object with more fields, each made when somebody first asks for it. To whoever reads, copies or compares it they
 * are fields like the others.
 */
export function withWhenAsked<Given extends object, Fields extends object>(
  given: Given,
  makers: Makers<Fields>,
): Given & Fields {
  const kept: Record<string, () => unknown> = {};
  for (const name in makers) kept[name] = whenAsked(makers[name]);
  return askedOf({ ...given }, kept) as Given & Fields;
}

/** The same object with some fields otherwise; what is made when asked for is not asked for, and made once for both. */
export function withFields<Given extends object>(given: Given, fields: Partial<Given>): Given {
  const { [makersIn]: kept }: WithMakers = given;
  if (!kept) return { ...given, ...fields };
  const known: Partial<Given> = {};
  for (const name in given) if (!(name in kept)) known[name] = given[name];
  return askedOf({ ...known, ...fields }, kept) as Given;
}

function askedOf(whole: object, makers: Kept): object {
  Object.defineProperty(whole, makersIn, { value: makers });
  for (const name in makers) Object.defineProperty(whole, name, getterOf(name));
  return whole;
}

function getterOf(name: string): PropertyDescriptor {
  const known = getters.get(name);
  if (known) return known;
  const getter: PropertyDescriptor = {
    get(this: WithMakers) {
      return this[makersIn]?.[name]?.();
    },
    enumerable: true,
  };
  getters.set(name, getter);
  return getter;
}
