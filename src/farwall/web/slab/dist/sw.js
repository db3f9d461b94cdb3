const KEPT = "slab-fecb2171f57b";
const SHELL = "/slab/files/index.html";
const FILES = [SHELL, "/slab/files/slab.js", "/slab/files/samples.js", "/slab/files/en.json", "/slab/files/es.json", "/slab/files/slab.webmanifest"];
self.addEventListener("install", (event) => {
  const fresh = FILES.map((path) => new Request(path, { cache: "no-cache" }));
  event.waitUntil(caches.open(KEPT).then((kept) => kept.addAll(fresh)).then(() => self.skipWaiting()));
});
self.addEventListener("activate", (event) => {
  const old = (names) => names.filter((name) => name.startsWith("slab-") && name !== KEPT);
  const gone = caches.keys().then((names) => Promise.all(old(names).map((name) => caches.delete(name))));
  event.waitUntil(gone.then(() => self.clients.claim()));
});
self.addEventListener("fetch", (event) => {
  const { pathname, origin } = new URL(event.request.url);
  if (event.request.method !== "GET" || origin !== self.location.origin) return;
  const page = event.request.mode === "navigate" && /^\/slab\/[^/]+$/.test(pathname);
  const wanted = page ? SHELL : pathname;
  if (!FILES.includes(wanted)) return;
  event.respondWith(
    caches.open(KEPT).then((kept) => kept.match(wanted)).then((found) => found || fetch(event.request)),
  );
});