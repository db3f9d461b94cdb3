// Stands inside the page: while the page's own script is on its way, the phone's memory opens and the
// plan and the words are asked for. See `opened` in store.ts, `fetchSheet` in send.ts, tongue.ts.
(() => {
  const early = window.early = { key: "" };
  let spoken = "";
  try {
    spoken = localStorage.getItem("farwall-slab-speaks") || "";
  } catch {} // a browser that keeps nothing
  const all = [spoken, ...navigator.languages].map((one) => one.slice(0, 2).toLowerCase());
  const language = all.find((one) => one === "en" || one === "es") || "en";
  early.words = { language, told: fetch(`/slab/files/${language}.json`) };
  early.words.told.catch(() => {});
  early.base = new Promise((done, broken) => {
    const asked = indexedDB.open("farwall-slab", 2);
    asked.onupgradeneeded = ({ oldVersion }) => {
      if (oldVersion < 1) asked.result.createObjectStore("kept");
      if (oldVersion < 2) asked.result.createObjectStore("photos");
    };
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => broken(asked.error);
  });
  early.base.catch(() => {}); // who waits for it is told
  const key = decodeURIComponent(location.hash.slice(1));
  const job = location.pathname.split("/")[2];
  if (!key || !job) return;
  early.key = key;
  early.told = fetch(`/api/jobs/${job}/sheet`, { headers: { Authorization: `Bearer ${key}` }, cache: "no-store" });
  early.told.catch(() => {});
})();
