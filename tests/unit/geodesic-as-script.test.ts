import whole from "geographiclib-geodesic";
import { afterEach, expect, it, vi } from "vitest";

afterEach(() => {
  vi.doUnmock("geographiclib-geodesic");
  vi.unstubAllGlobals();
  vi.resetModules();
});

// As a browser loads it without a bundler: see tests/browser/recipes.test.ts for the real thing.
it("finds GeographicLib where it was loaded as a script, which exports nothing", async () => {
  vi.resetModules();
  vi.doMock("geographiclib-geodesic", () => ({ default: undefined }));
  vi.stubGlobal("geodesic", whole);
  const { geodesicArea } = await import("../../src/area/geodesic.ts");
  const { ground } = geodesicArea({
    type: "Polygon",
    // A degree round the north pole: GeographicLib test suite, case Planimeter0.
    coordinates: [[[0, 89], [90, 89], [180, 89], [270, 89], [0, 89]]], // biome-ignore format: pairs
  });
  expect(ground.value).toBeCloseTo(24_952_305_678, 0);
});
