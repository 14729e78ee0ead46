// Shows our keypad beside a weight field. Without it the field is a plain decimal field and nothing is missing but the keys.
(function () {
  "use strict";
  const field = document.querySelector("input[data-keypad]");
  const keys = document.querySelector("[data-keys]");
  const keep = document.querySelector("[data-keeps]");
  if (!field || !keys) {
    return;
  }
  const before = [];
  const words = keep ? keep.textContent : "";

  function isWeight(typed) {
    return /^\d{1,3}([.,]\d{1,3})?$/.test(typed);
  }

  function sayWhatIsKept() {
    if (!keep) {
      return;
    }
    const typed = field.value.trim();
    keep.textContent = isWeight(typed) ? keep.dataset.keeps.replace("{}", typed.replace(",", ".")) : words;
  }

  function press(key) {
    if (key === "undo") {
      field.value = before.length > 0 ? before.pop() : field.value.slice(0, -1);
    } else if (key !== "." || !/[.,]/.test(field.value)) {
      before.push(field.value);
      field.value += key;
    }
    sayWhatIsKept();
  }

  keys.addEventListener("click", function (event) {
    const key = event.target.closest("[data-key]");
    if (key) {
      press(key.dataset.key);
    }
  });
  field.addEventListener("input", function () {
    before.length = 0;
    sayWhatIsKept();
  });
  field.inputMode = "none";
  keys.hidden = false;
  sayWhatIsKept();
})();
