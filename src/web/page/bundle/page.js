import{R as o}from"./chunk-F6MCQ53X.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-47PSEHQW.js"));
