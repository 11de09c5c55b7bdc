/** So long a search may keep everything else waiting, ms. */
const most = 8;

/**
 * All that a search finds, with a pause whenever it has taken its time, so that it keeps nobody waiting however much there is. Nothing
 * where `wanted` says meanwhile that it is no longer of use.
 */
export async function atLeisure<Found>(
  search: Iterable<Found>,
  wanted: () => boolean,
): Promise<readonly Found[] | undefined> {
  const all: Found[] = [];
  let since = performance.now();
  for (const found of search) {
    all.push(found);
    if (performance.now() - since < most) continue;
    await new Promise((resolve) => setTimeout(resolve, 0));
    if (!wanted()) return undefined;
    since = performance.now();
  }
  return all;
}
