// The events with which the entry path tells a form that its entry was begun, and what it was answered.
for (const name of ["entrybegun", "entryanswered"]) Blazor.registerCustomEventType(name, { createEventArgs: (event) => event.detail });
