/** The browser's own database, asked with promises: no more of it than the page needs. */

/** What a request came to; raises what it failed with. */
export function asked<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((done, broken) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => broken(request.error);
  });
}

/**
 * When a transaction is on the disk, as surely as it was begun for; raises why it is not. Asked for as
 * it begins. That it failed is told to who waits for it, and to nobody else.
 */
export function ended(writing: IDBTransaction): Promise<void> {
  const end = new Promise<void>((done, broken) => {
    writing.oncomplete = () => done();
    writing.onabort = () => broken(writing.error ?? new DOMException("", "AbortError"));
  });
  end.catch(() => undefined);
  return end;
}

/** The page's base, made where there is none: as `early.js` does it, for the file that has no such script. */
export function openBase(): Promise<IDBDatabase> {
  const opening = indexedDB.open("farwall-slab", 2);
  opening.onupgradeneeded = ({ oldVersion: old }) => {
    if (old < 1) opening.result.createObjectStore("kept");
    if (old < 2) opening.result.createObjectStore("photos");
  };
  return asked(opening);
}
