import{M as o}from"./chunk-WVIJCWLQ.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-WXENO3FL.js"));
