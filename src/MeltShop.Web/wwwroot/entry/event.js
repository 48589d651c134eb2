// The event with which the entry path tells a form what its entry was answered.
Blazor.registerCustomEventType("entryanswered", { createEventArgs: (event) => event.detail });
