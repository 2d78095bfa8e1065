import{A as op,B as ip,C as Ee,D as sp,E as rp,F as ap,G as ot,H as $t,I as lp,J as up,K as ue,L as an,M as Ai,N as Ie,O as ul,P as dp,Q as cp,S as pp,T as mp,U as fp,a as qc,b as Hc,c as Q,d as v,e as Nc,f as Uc,g as Ri,h as Js,i as Ot,j as Ao,k as zc,l as Jc,m as Si,n as Vc,o as Kc,p as Di,q as Qc,r as Gc,s as Vs,t as Yc,u as Zc,v as Xc,w as tp,x as ep,y as xn,z as np}from"./chunk-NOD6VTU6.js";var Ks=globalThis,Gs=Ks.ShadowRoot&&(Ks.ShadyCSS===void 0||Ks.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,gp=Symbol(),hp=new WeakMap,Qs=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==gp)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Gs&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=hp.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&hp.set(n,e))}return e}toString(){return this.cssText}},_p=t=>new Qs(typeof t=="string"?t:t+"",void 0,gp);var $p=(t,e)=>{if(Gs)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Ks.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},dl=Gs?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return _p(n)})(t):t;var{is:rb,defineProperty:ab,getOwnPropertyDescriptor:lb,getOwnPropertyNames:ub,getOwnPropertySymbols:db,getPrototypeOf:cb}=Object,Ys=globalThis,wp=Ys.trustedTypes,pb=wp?wp.emptyScript:"",mb=Ys.reactiveElementPolyfillSupport,Pi=(t,e)=>t,cl={toAttribute(t,e){switch(e){case Boolean:t=t?pb:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},yp=(t,e)=>!rb(t,e),bp={attribute:!0,type:String,converter:cl,reflect:!1,useDefault:!1,hasChanged:yp};Symbol.metadata??=Symbol("metadata"),Ys.litPropertyMetadata??=new WeakMap;var ln=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=bp){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&ab(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=lb(this.prototype,e)??{get(){return this[n]},set(a){this[n]=a}};return{get:i,set(a){let d=i?.call(this);s?.call(this,a),this.requestUpdate(e,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??bp}static _$Ei(){if(this.hasOwnProperty(Pi("elementProperties")))return;let e=cb(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(Pi("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Pi("properties"))){let n=this.properties,o=[...ub(n),...db(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(dl(i))}else e!==void 0&&n.push(dl(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return $p(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:cl).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),a=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:cl;this._$Em=i;let d=a.fromAttribute(n,s.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let a=this.constructor;if(i===!1&&(s=this[e]),o??=a.getPropertyOptions(e),!((o.hasChanged??yp)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(a._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},a){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,a??n??this[e]),s!==!0||a!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:a}=s,d=this[i];a!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,s,d)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};ln.elementStyles=[],ln.shadowRootOptions={mode:"open"},ln[Pi("elementProperties")]=new Map,ln[Pi("finalized")]=new Map,mb?.({ReactiveElement:ln}),(Ys.reactiveElementVersions??=[]).push("2.1.2");var ml=globalThis,vp=t=>t,Zs=ml.trustedTypes,kp=Zs?Zs.createPolicy("lit-html",{createHTML:t=>t}):void 0,fl="$lit$",un=`lit$${Math.random().toFixed(9).slice(2)}$`,hl="?"+un,fb=`<${hl}>`,eo=document,Mi=()=>eo.createComment(""),Fi=t=>t===null||typeof t!="object"&&typeof t!="function",gl=Array.isArray,Ap=t=>gl(t)||typeof t?.[Symbol.iterator]=="function",pl=`[ 	
\f\r]`,Oi=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,xp=/-->/g,Tp=/>/g,Xn=RegExp(`>|${pl}(?:([^\\s"'>=/]+)(${pl}*=${pl}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Rp=/'/g,Sp=/"/g,Pp=/^(?:script|style|textarea|title)$/i,_l=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=_l(1),R=_l(2),dA=_l(3),Mt=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Dp=new WeakMap,to=eo.createTreeWalker(eo,129);function Op(t,e){if(!gl(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return kp!==void 0?kp.createHTML(e):e}var Mp=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",a=Oi;for(let d=0;d<n;d++){let c=t[d],p,m,_=-1,w=0;for(;w<c.length&&(a.lastIndex=w,m=a.exec(c),m!==null);)w=a.lastIndex,a===Oi?m[1]==="!--"?a=xp:m[1]!==void 0?a=Tp:m[2]!==void 0?(Pp.test(m[2])&&(i=RegExp("</"+m[2],"g")),a=Xn):m[3]!==void 0&&(a=Xn):a===Xn?m[0]===">"?(a=i??Oi,_=-1):m[1]===void 0?_=-2:(_=a.lastIndex-m[2].length,p=m[1],a=m[3]===void 0?Xn:m[3]==='"'?Sp:Rp):a===Sp||a===Rp?a=Xn:a===xp||a===Tp?a=Oi:(a=Xn,i=void 0);let b=a===Xn&&t[d+1].startsWith("/>")?" ":"";s+=a===Oi?c+fb:_>=0?(o.push(p),c.slice(0,_)+fl+c.slice(_)+un+b):c+un+(_===-2?d:b)}return[Op(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},Ci=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,a=0,d=e.length-1,c=this.parts,[p,m]=Mp(e,n);if(this.el=t.createElement(p,o),to.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=to.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(fl)){let w=m[a++],b=i.getAttribute(_).split(un),k=/([.?@])?(.*)/.exec(w);c.push({type:1,index:s,name:k[2],strings:b,ctor:k[1]==="."?tr:k[1]==="?"?er:k[1]==="@"?nr:oo}),i.removeAttribute(_)}else _.startsWith(un)&&(c.push({type:6,index:s}),i.removeAttribute(_));if(Pp.test(i.tagName)){let _=i.textContent.split(un),w=_.length-1;if(w>0){i.textContent=Zs?Zs.emptyScript:"";for(let b=0;b<w;b++)i.append(_[b],Mi()),to.nextNode(),c.push({type:2,index:++s});i.append(_[w],Mi())}}}else if(i.nodeType===8)if(i.data===hl)c.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(un,_+1))!==-1;)c.push({type:7,index:s}),_+=un.length-1}s++}}static createElement(e,n){let o=eo.createElement("template");return o.innerHTML=e,o}};function no(t,e,n=t,o){if(e===Mt)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=Fi(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=no(t,i._$AS(t,e.values),i,o)),e}var Xs=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??eo).importNode(n,!0);to.currentNode=i;let s=to.nextNode(),a=0,d=0,c=o[0];for(;c!==void 0;){if(a===c.index){let p;c.type===2?p=new Po(s,s.nextSibling,this,e):c.type===1?p=new c.ctor(s,c.name,c.strings,this,e):c.type===6&&(p=new or(s,this,e)),this._$AV.push(p),c=o[++d]}a!==c?.index&&(s=to.nextNode(),a++)}return to.currentNode=eo,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},Po=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=no(this,e,n),Fi(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Mt&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Ap(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&Fi(this._$AH)?this._$AA.nextSibling.data=e:this.T(eo.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=Ci.createElement(Op(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Xs(i,this),a=s.u(this.options);s.p(n),this.T(a),this._$AH=s}}_$AC(e){let n=Dp.get(e.strings);return n===void 0&&Dp.set(e.strings,n=new Ci(e)),n}k(e){gl(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(Mi()),this.O(Mi()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=vp(e).nextSibling;vp(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},oo=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,a=!1;if(s===void 0)e=no(this,e,n,0),a=!Fi(e)||e!==this._$AH&&e!==Mt,a&&(this._$AH=e);else{let d=e,c,p;for(e=s[0],c=0;c<s.length-1;c++)p=no(this,d[o+c],n,c),p===Mt&&(p=this._$AH[c]),a||=!Fi(p)||p!==this._$AH[c],p===u?e=u:e!==u&&(e+=(p??"")+s[c+1]),this._$AH[c]=p}a&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},tr=class extends oo{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},er=class extends oo{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},nr=class extends oo{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=no(this,e,n,0)??u)===Mt)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},or=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){no(this,e)}},Fp={M:fl,P:un,A:hl,C:1,L:Mp,R:Xs,D:Ap,V:no,I:Po,H:oo,N:er,U:nr,B:tr,F:or},hb=ml.litHtmlPolyfillSupport;hb?.(Ci,Po),(ml.litHtmlVersions??=[]).push("3.3.3");var de=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new Po(e.insertBefore(Mi(),s),s,void 0,n??{})}return i._$AI(t),i};var $l=globalThis,Oo=class extends ln{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=de(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Mt}};Oo._$litElement$=!0,Oo.finalized=!0,$l.litElementHydrateSupport?.({LitElement:Oo});var gb=$l.litElementPolyfillSupport;gb?.({LitElement:Oo});($l.litElementVersions??=[]).push("4.2.2");var Cp=()=>{},wl=!1;function Lp(t){Cp=t}function nt(){wl||(wl=!0,queueMicrotask(()=>{wl=!1,Cp()}))}function Wp(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var L=t=>t.replaceAll("~","~0").replaceAll("/","~1");function $(t,e){let n=t;for(let o of Wp(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function A(t,e,n){return bl(t,Wp(e),n)}function bl(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let d=[...t],c=bl(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let s={...t??{}},a=bl(s[o],i,n);return a===void 0?delete s[o]:s[o]=a,s}var Bp=t=>Uc("GET",`/api/bench?run=${encodeURIComponent(t)}`),Ep=t=>Ri("/api/bench/tick",t),Ip=t=>Ri("/api/bench/weigh_cup",t),jp=(t,e)=>Ri("/api/bench/anew",{run:t,batch:e}),qp=(t,e)=>Ri("/api/bench/finish",{run:t,batch:e});var st=(t,e)=>({name:t,label:e,unit:"mm"}),Tn=st("height","Floor to brim"),ir={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},yl={block:{words:"Box, loaf or slab",measures:[st("length","Longer side at the brim"),st("width","Shorter side"),Tn,ir,{...st("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[st("floor_diameter","Across the floor"),st("brim_diameter","Across the brim"),Tn]},fluted_cup:{words:"Fluted cup",measures:[st("floor_diameter","Across the floor"),st("brim_diameter","Across the brim"),Tn,{name:"flutes",label:"Flutes",unit:"",count:!0},st("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},st("across_flats","Across the flats"),Tn,ir]},dome:{words:"Bowl",measures:[st("diameter","Across the brim"),Tn]},half_ball:{words:"Half ball",measures:[st("diameter","Across the brim")]},ball:{words:"Ball",measures:[st("diameter","Across")]},half_ring:{words:"Half ring",measures:[st("centre_diameter","Ring, middle to middle of the tube"),st("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[st("outer_floor_diameter","Cup, across the floor"),st("outer_brim_diameter","Cup, across the brim"),st("post_floor_diameter","Post, at its foot"),st("post_brim_diameter","Post, at its top"),Tn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[st("height","Height"),st("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Tn,ir],points:{columns:[st("x","From the left"),st("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[st("side","Straight edge, tip to round"),Tn,ir]}},Hp=Object.fromEntries(Object.entries(yl).map(([t,{words:e}])=>[t,e])),Mo=t=>yl[t]?.measures??[],Rn=t=>yl[t]?.points;var vl=(t,e)=>String($(t,e)??"").trim(),Li=t=>vl(t,"/shape/kind"),ye=(t,e)=>$(t,`/${e}`)!==void 0,kl=t=>["body","skin"].includes(vl(t,"/mesh/role"));function Xt(t,e){let n=$(t,e);return Array.isArray(n)?n:[]}function Np(t,e){return(Rn(Li(t))?.columns??[]).map(({name:o})=>String($(e,`/${o}`)??"").trim())}function Wi(t){return Xt(t,"/shape/points").flatMap((e,n)=>Np(t,e).every(Boolean)?[n]:[])}function sr(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return Xt(t,"/shape/points").flatMap((n,o)=>e(Np(t,n))?[o]:[])}var xl=t=>Xt(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function Up(t){let e=t,n=(o,i)=>{if(!Array.isArray($(e,o)))return;let s=i.map(a=>$(t,`${o}/${a}`));e=A(e,o,s)};return Rn(Li(t))&&n("/shape/points",Wi(t)),n("/water/weighings",xl(t)),e}function rr(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?Wi(t):xl(t);return`${n}/${s[Number(o)]??o}${i}`}function Bi(t){let e=[],n=i=>vl(t,i)!=="",o=(i,s)=>{i||e.push(s)};if(ye(t,"shape")){let i=Li(t);o(i!=="","the shape");for(let{name:a,label:d,optional:c}of Mo(i))o(c||n(`/shape/${a}`),d.toLowerCase());let s=Rn(i);s&&o(Wi(t).length>=s.least,`${s.least} points at least`)}if(ye(t,"water")){o(n("/water/temperature"),"the water's temperature"),o($(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(xl(t).length>0,"a weighing of water")}return!kl(t)&&!ye(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var Jt=t=>t.slice(0,t.lastIndexOf("/")+1),te=t=>t.slice(t.lastIndexOf("/")+1),dn=(t,e)=>{let n=Jt(t);return n?_b(n+e):e};function _b(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function ve(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function Fo(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(a=>a.file===s))return s}}var $b=["mould","formula","run","file","own_fats","own_tips"];function Tl(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?Tl(o,i):$b.includes(n)?[i]:[]})}function Rl(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...Tl(t)])[n,o]=[A(n,i,void 0),A(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Sl(t,e){let n=["/id",...Tl(t)].filter(o=>$(t,o)!==$(e,o));return o=>n.reduce((i,s)=>$(i,s)===$(t,s)?A(i,s,$(e,s)):i,o)}var io={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:t,file:e,now:n})=>t?te(e):ve(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},so={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:t})=>ve(String(t.for??"order"),".order.json"),written:t=>t,is_begun:()=>!0},Co={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:t,file:e,now:n})=>t?te(e):ve(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Dl=(t,e,n)=>({name:t,list:e,called:n,has_id:!1,new_name:({file:o})=>te(o),written:o=>o,is_begun:()=>!0}),Ei=Dl("studio","studios","name"),je=Dl("fats","fats"),Sn=Dl("tips","tips","title"),Vt={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:t})=>ve(String(t.name),".json"),written:t=>({...Up(t),name:String(t.name??"").trim()}),is_begun:t=>ye(t,"shape")||ye(t,"mesh")};var zp={},Jp={kind:io,id:"",file:"",version:null,shipped:!1,now:zp,saved:zp,unanswered:[]},Ft={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Jp,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(yb()),folded:new Set,units:wb(),announcement:""},l=Ft;function wb(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var Al=t=>`numbers ${String(t.now.id??t.file)}`,bb=t=>({numbers:localStorage.getItem(Al(t))??void 0,figure:""});function Ii(t){h({quote_wish:{...Ft.quote_wish,...t}});let{numbers:e}=Ft.quote_wish;e?.trim()?localStorage.setItem(Al(Ft.run),e):localStorage.removeItem(Al(Ft.run))}var Vp="set-up ";function yb(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function vb(){let t=[...Ft.open].filter(e=>e.startsWith(Vp));localStorage.setItem("parts",JSON.stringify(t))}function h(t){Object.assign(Ft,t),nt()}var q=t=>h({announcement:t});function y(t,e){Object.assign(t,e),nt()}function qe(t,e){let{[t]:n,...o}=Ft.formulas;h({formulas:e?{...o,[t]:e}:o})}function qt(t,e){let n=new Set(Ft[t]);n.delete(e)||n.add(e),h({[t]:n}),e.startsWith(Vp)&&vb()}function Lo(t=Jp){h({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,quote_wish:bb(t),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function rt(t){Ft.open.has(t)||h({open:new Set(Ft.open).add(t)})}function ro({list:t,called:e},n,o={}){if(!Ft.files)return;let i=Ft.files[t].findIndex(d=>d.file===n),s={...i<0?{}:Ft.files[t][i],file:n,name:String((e&&o[e])??""),note:String(o.note??""),shipped:!1},a=Ft.files[t].filter(d=>d.file!==n);a.splice(i<0?a.length:i,0,s),h({files:{...Ft.files,[t]:a}})}var kb=1e4,Pl=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Pl);var ar=[],Wo=()=>`bench ${l.files?.folder??""}`;function ee(){try{return[...JSON.parse(localStorage.getItem(Wo())??"[]"),...ar]}catch{return ar}}function Ol(t){try{t.length?localStorage.setItem(Wo(),JSON.stringify(t)):localStorage.removeItem(Wo()),ar=[]}catch{ar=t}}var xb=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function Kp(t){let e={...t,id:crypto.randomUUID(),tab:Pl,at:Date.now()};Ol([...ee().filter(n=>!xb(n,e)),e])}var lr=t=>Ol(ee().filter(e=>!t(e))),Qp=(t,e)=>Ol(ee().map(n=>n.run===t?{...n,run:e}:n)),Ml=()=>ee().find(t=>t.tab===Pl||Date.now()-t.at>kb);var ct=["pour","pipe","apart"],wt=["studio","own_fats","own_tips"],ur=t=>wt.includes(t);var Fl=t=>[...new Set(t.flatMap(e=>l.formulas[e]??[]))],Cl=()=>wt.flatMap(t=>l.beside[t]??[]),Gp=t=>t.filter(e=>e.theirs),cn=t=>Gp([...Fl(t==="apart"?["apart"]:["pour","pipe"]),...Cl()])[0],dr=()=>[l.run,...Fl(ct),...Cl()].filter(t=>t.is_taken&&!t.theirs),cr=()=>Gp([l.run,...Fl(ct),...Cl()]);var ji=()=>l.formulas.apart?"apart":"run",Yp=t=>h({dangers:{...l.dangers,[ji()]:t}});function Ll(t){let e=t.cautions.filter(n=>n.severity==="danger");Yp(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function Zp(t){t.lye_heavy&&Yp([{text:Q(t),is_of_heat:!1}])}var Xp={};function ke(t,e){(Xp[t]??=[]).push(e)}function vt(t,e){for(let n of Xp[t]??[])n(e)}async function ce({kind:t,name:e,text:n,from:o,goes_on:i,about_to:s,is_own:a}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:w=[],tips:b=[]}=l.files??{},k=Fo(e,[...d,...c,...p,...m,..._,...w,...b]);s?.(k);let z=await Tb({file:k,version:null,text:n,from:o,goes_on:i});if(ro(t,k,$t(z.there.text)??{}),z.is_new||a?.(z.there))return z.there}}async function Tb(t){try{return{is_new:!0,there:await Ao(t)}}catch(e){if(!(e instanceof v)||e.status!==409)throw e;return{is_new:!1,there:e.answer}}}var pr=t=>`unsaved ${t.name} ${l.files?.folder??""} `;function ao({kind:t,id:e,file:n,version:o,shipped:i,now:s},a){if(t.is_begun(s))try{let d={id:e,file:n,version:o,shipped:i,text:ot(s),copy:a};localStorage.setItem(pr(t)+e,JSON.stringify(d))}catch{}}function Wl(t,e){try{return JSON.parse(localStorage.getItem(pr(t)+e)??"null")??void 0}catch{return}}var Dn=(t,e)=>localStorage.removeItem(pr(t)+e),tm=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function mr(t){let e=pr(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>Wl(t,o)??[])}var Rb=300,J=t=>t.now!==t.saved;function lo(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Ct(t,e,n=e){let o=await mp(e),i=Sb(t,JSON.parse(o.text),o.shipped),s=Wl(t,n),a=s?.copy&&o.shipped?await Db(t,s,i):void 0;if(a)return Dn(t,n),Ct(t,a);let{version:d,shipped:c=!1}=o,p={kind:t,id:n,file:e,version:d,shipped:c,now:i,saved:i,unanswered:[]};return s&&Ab(p,s,o),p}var Sb=(t,e,n=!1)=>t.has_id&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function Db(t,e,n){if(!l.files?.[t.list].some(s=>s.file===e.copy))return;let o=$t(e.text),i=$t((await Ot(e.copy)).text);if(!(!o||!i||ot(o)===ot(n)))return Rl(t.written(o),i)?e.copy:void 0}function Ab(t,e,n){let o=$t(e.text);if(!o||ot(o)===ot(t.now))return Dn(t.kind,t.id);y(t,{now:o}),!(e.version===n.version||n.shipped)&&(y(t,{version:e.version}),lm(t,n))}function xt(t,e){let n=t.now;y(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),ao(t),vt("edited",{file:t,before:n})}var em=new WeakMap,Bl=async t=>em.get(t),He=t=>nm(t,()=>Pb(t)),Bo=t=>nm(t,()=>t.shipped?om(t,im):Promise.resolve());function nm(t,e){let n=Bl(t).then(e);return em.set(t,n.catch(()=>{})),n}async function Pb(t){!J(t)||t.theirs||await om(t,t.shipped||!t.file?im:sm)}async function om(t,e){y(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof v&&y(t,{failed:Q(n.complaint)}),n}}async function im(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),a=await ce({kind:e,name:e.new_name(t),text:ot(s),from:i,goes_on:i!==void 0&&e.name==="run",about_to:m=>ao(t,m),is_own:({text:m})=>i!==void 0&&Rl(s,$t(m)??{})}),d=JSON.parse(a.text),c=Sl(s,d),p=t.now===o?d:c(t.now);Dn(e,n),y(t,{id:a.file,file:a.file,version:a.version,shipped:!1,now:p,saved:d}),J(t)&&ao(t),i!==void 0&&vt("copied",{file:t,from:i,renamed:c})}async function sm(t){let{version:e,now:n}=t,o=ot(t.kind.written(n));y(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{fr(t,n,(await Ao({file:t.file,version:e,text:o})).version)}catch(i){if(!(i instanceof v)||i.status!==409)throw i;rm(t,i.answer),J(t)&&!t.theirs&&await sm(t)}}function fr(t,e,n){y(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),J(t)?ao(t):Dn(t.kind,t.id),ro(t.kind,t.file,e)}function rm(t,{version:e,text:n}){if(n===ot(t.kind.written(t.now)))return fr(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(y(t,{unanswered:[]}),o)return y(t,{version:e,saved:void 0,theirs:void 0});let i=J(t)||t.theirs?void 0:$t(n);i?Ob(t,i,e):lm(t,{version:e,text:n})}function Ob(t,e,n){vt("giving_way",{file:t}),y(t,{set_aside:t.now,is_taken:!0,now:e}),fr(t,e,n),q(`${t.file} was changed outside this page, and stands here as it is now.`),vt("gave_way",{file:t})}var am=t=>y(t,{set_aside:void 0,is_taken:void 0});function lm(t,{version:e,text:n}){y(t,{theirs:{version:e,text:n}}),ao(t),q(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),vt("conflict",{file:t})}function um(t){if(!t.theirs)return;let e=$t(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return y(t,{failed:n})}vt("giving_way",{file:t}),y(t,{set_aside:t.now,now:e}),fr(t,e,t.theirs.version),vt("gave_way",{file:t})}function dm(t){t.theirs&&(y(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),ao(t),vt("unwritten",{file:t}))}var uo=({theirs:t})=>t?.text===null;function cm(t){uo(t)&&(Dn(t.kind,t.id),y(t,{saved:t.now,theirs:void 0,failed:void 0}),q(`${t.file} stays deleted.`),vt("left_deleted",{file:t}))}function pm(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;xt(t,e),y(t,{set_aside:o?void 0:n})}var mm=t=>(t.theirs??t).version;function fm(t,e){y(t,{id:e,file:e}),vt("renamed",{file:t,renamed:n=>n})}async function hm(t){let{version:e,text:n}=await Ot(t.file),o=$t(n);if(!o||t.theirs||e===t.version)return;let i=Sl(t.now,o);if(J(t))return y(t,{version:e,now:i(t.now),saved:o});y(t,{version:e,now:o,saved:o}),vt("renamed",{file:t,renamed:i})}var gm=t=>t.shipped||!t.file?[]:[[t.file,mm(t)]];async function El(t,e,n,o){let i=t.file,s=()=>mm(t)===e&&t.file===i;if(!s()||(await Bl(t),!s()))return!1;o(),await Il();let a=await Mb(i,n);return await Bl(t),s()&&(rm(t,a),J(t)&&!t.theirs&&vt("unwritten",{file:t})),!0}async function Mb(t,e){let n=await e(t);return n===null?{version:n,text:null}:Ot(t)}var Il=()=>new Promise(t=>setTimeout(t,Rb));var Fb=400,Cb=2e3,ql=new WeakMap;function $m(t,e){clearTimeout(ql.get(t)),ql.set(t,window.setTimeout(()=>{Ne(t)},e))}var An=(t=l.run)=>$m(t,Fb),Lb=t=>t===l.run||t===l.order?.open;async function Ne(t=l.run){clearTimeout(ql.get(t));try{await He(t),J(t)&&!t.theirs&&Lb(t)&&An(t)}catch(e){if(!(e instanceof v))throw e;e.may_pass&&$m(t,Cb)}}async function pn(){for(let t of[l.run,l.order?.open])t?.file&&J(t)&&await Ne(t)}var _m=Promise.resolve(),jl=0;function Ue(){if(!jl&&!Wb().length)return;++jl;let t=_m.then(Bb).finally(()=>--jl);return _m=t.catch(()=>{}),t}var Wb=()=>[...ct.map(t=>l.formulas[t]),...wt.map(t=>l.beside[t])].filter(t=>t!==void 0&&J(t)&&!t.theirs);async function Bb(){for(let t of ct){let e=l.formulas[t];!e||!J(e)||e.theirs||(e.shipped&&t!=="apart"&&await Bo(l.run),await He(e))}for(let t of wt){let e=l.beside[t];e&&J(e)&&!e.theirs&&await He(e)}}var xe=t=>dn(l.run.file,t);function Kt(t,e){let n=xe(t);return e?.some(o=>o.file===n)?n:t}function wm(t){let e=l.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=Kt(String(n?.mould??""),l.files?.moulds);return{file:Fo("trial.run.json",l.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...Eb(e)}}}function Eb(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}var Pn=({lines:t})=>Array.isArray(t)?t:[];function mn(t){let e=Pn(t);return e.length>0&&e.every(({run:n,pieces:o})=>n&&typeof o=="number")}var Te=new Map,qi=new Set,Ib={changed:{},unreadable:[]},Eo=()=>new Set([...ct.flatMap(t=>l.formulas[t]??[]),...wt.flatMap(t=>l.beside[t]??[])]);function Io(){let t=qb(),e=new Set([...Eo()].map(({file:o})=>o));for(let o of Te.keys())!t.has(o)&&!e.has(o)&&Te.delete(o);for(let o of qi)t.has(o)||qi.delete(o);let n=[...t].filter(o=>!Te.has(o));return n.length?jb(n):void 0}async function jb(t){for(let[e,n]of await bm(t))Te.has(e)||Te.set(e,n)}async function bm(t){let e=t.filter(o=>!qi.has(o)),n=e.length?await Di(new Map(e.map(o=>[o,null]))):Ib;return Ul(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var Hl=async t=>(await bm([t])).get(t)??null,Nl=()=>new Map([...Te].filter(([t])=>!qi.has(t)));function qb(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(xe(o)),o.includes("..")||t.add(o))},n=l.run.now;t.add(xe("studio.json")),e($(n,"/pour/mould")),e($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e($(o,"/mould"));for(let o of["pour","pipe"])l.formulas[o]||e($(n,`/${o}/formula`));for(let{file:o,now:i}of Eo()){let s=i.own_fats;typeof s=="string"&&s&&t.add(Jt(o)+s).add(s)}e($(l.beside.studio?.now,"/own_tips"));for(let o of Hb())t.add(o);for(let o of wt)t.delete(l.beside[o]?.file??"");return t}function Hb(){let{open:t}=l.order??{},e=new Set(t?Pn(t.now).map(({run:p})=>dn(t.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:s=[],tips:a=[]}=l.files??{},d=[...n,...o,...i,...s,...a].filter(({shipped:p})=>!p),c=-1;for(;c!==e.size;){c=e.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>e.has(_))&&e.add(p)}return t&&e.size&&e.add(dn(t.file,"studio.json")),e.delete(l.run.file),e}function ym(t,{changed:e}){let n=Object.keys(e).filter(o=>Te.has(o)&&Te.get(o)===t.get(o));for(let o of n)Te.set(o,e[o]);return n}var Ul=t=>t.forEach(e=>qi.add(e));function vm(){return[...Eo()].flatMap(({file:t,version:e})=>{let n=Te.get(t)??e;return Te.delete(t),n===e?[]:[t]})}var km=0,co=()=>km;function zl(t){++km,h({is_old:!0,changed_beside:t})}var Nb=1e3,Ub=450,hr=!1,po=!1,Jl=0;function ut(){h({is_old:!0}),hr?po=!0:jo()}async function jo(){if(hr){po=!0;return}hr=!0,xm(!1);try{do po=!1,await zb();while(po)}finally{hr=!1,xm(!0)}}async function Rm(){let{run:t}=l,e={file:t.file,run:t.now},n=await fp(e)?.catch(()=>{});!n||t!==l.run||l.plan||tm()||(h({plan:n,planned:e}),Ll(n))}var xm=t=>{document.documentElement.dataset.settled=String(t)};function Tm(){let{run:t}=l,{apart:e}=l.formulas,{file:n,now:o}=t;return()=>{let i=t===l.run&&(n===t.file||o===t.now);return e===l.formulas.apart&&(e!==void 0||i)}}async function zb(){let t=Tm();try{let e=Ue();e&&await e;let n=Io();n&&await n,t=Tm();let{apart:o}=l.formulas;if(cn(o?"apart":"run"))return h({is_old:!0});let i=co(),s=o?wm(o.file):{file:l.run.file,run:l.run.now},a=await Vs(s);if(window.clearTimeout(Jl),!t())return void(po=!0);h({plan:a,planned:s,complaint:void 0}),Ll(a);let d=i===co();h({is_old:po||!d}),d&&h({changed_beside:void 0})}catch(e){if(!(e instanceof v))throw e;if(!t())return void(po=!0);Jb(e)}}function Jb(t){h({is_old:!0}),window.clearTimeout(Jl);let e=()=>{h({complaint:t.complaint}),Zp(t.complaint)};l.complaint||!l.plan?e():Jl=window.setTimeout(e,Ub),t.may_pass&&window.setTimeout(ut,Nb)}var Sm=2e3,ne=t=>h({bench:{...l.bench,...t}}),Vb=()=>ne({acts:ee()});addEventListener("storage",({key:t})=>{t===Wo()&&Vb()});function gr(){let{file:t}=l.run;!t||l.bench.run===t||(h({bench:{run:t,batches:[],complaints:[],acts:ee()}}),mo().then(Gl))}function Dm(t){let{file:e}=l.run;Qp(t,e),l.bench.run===t&&ne({run:e,acts:ee()}),l.bench.run===e&&mo()}function _r(){let{run:t,version:e}=l.bench;return e===void 0||t!==l.run.file?void 0:{run:t,version:e}}var Hi=0;async function mo(){let{run:t}=l.bench,e=Hi;try{let n=await Bp(t);if(t!==l.bench.run)return;if(e!==Hi)return await mo();Am(n)}catch(n){if(!(n instanceof v))throw n;if(t!==l.bench.run)return;ne({failed:Q(n.complaint)}),Pm(n)&&setTimeout(()=>l.bench.failed!==void 0&&void mo(),Sm)}}var Am=({batches:t,version:e,complaints:n=[]})=>ne({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),Pm=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),qo=t=>l.bench.batches.find(e=>e.batch===t),Kl=t=>l.bench.acts.filter(({run:e,batch:n})=>e===l.bench.run&&n===t),Ho=t=>Kl(t).length>0;function fo(t,e){let n=Kl(t).find(i=>i.key===e),o=qo(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Ql(t){let e=Kl(t).find(n=>n.reading!==void 0);return(e?e.reading:qo(t)?.weigh_cup)??""}function Om(t,e,n){let{run:o}=l.bench,s=qo(t)!==void 0||!l.planned?void 0:ot(l.planned.run);Kp({run:o,batch:t,seen:e,text:s,...n}),ne({acts:ee(),chosen:t,told:void 0}),Gl()}var Mm=(t,e,n,o)=>Om(t,e,{key:n,done:o}),Fm=(t,e,n)=>Om(t,e,{reading:n||null}),Vl=!1;async function Gl(){if(!Vl){Vl=!0;try{await navigator.locks.request(Wo(),Kb)}finally{Vl=!1}ee().length&&setTimeout(()=>{Gl()},Sm)}}async function Kb(){for(let t=Ml();t;t=Ml())if(!await Qb(t))return}async function Qb(t){let{id:e}=t;try{let n=await Gb(t);return++Hi,lr(o=>o.id===e),Yb(n,t.run),!0}catch(n){if(!(n instanceof v))throw n;return Pm(n)?(ne({unsent:Q(n.complaint)}),!1):(await Zb(t,n),!0)}}function Gb({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:a}){let d={run:t,text:e,batch:n,seen:o};return i!==void 0?Ep({...d,key:i,done:s??!1}):Ip({...d,reading:a??null})}function Yb(t,e){let n=ee();if(e!==l.bench.run)return ne({acts:n,unsent:void 0});let i=[...l.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,a)=>s.batch-a.batch);ne({acts:n,batches:i,unsent:void 0})}async function Zb(t,{complaint:e}){++Hi,lr(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${Q(e)}.`;ne({acts:ee(),unsent:void 0,told:{batch:t.batch,words:n}}),q(n),ut(),await mo()}async function Ni(t){let{run:e}=l.bench;await Cm(t,async()=>{let n=await jp(e,t);return lr(o=>o.run===e&&o.batch===t),n})}var Yl=t=>Cm(t,()=>qp(l.bench.run,t));async function Cm(t,e){let{run:n}=l.bench;try{let o=await e();if(++Hi,n!==l.bench.run)return;Am(o),ne({acts:ee(),told:void 0,chosen:t})}catch(o){if(!(o instanceof v))throw o;ne({told:{batch:t,words:Q(o.complaint)}})}}var Lm=t=>ne({chosen:t,told:void 0}),Wm=()=>ne({told:void 0});var Xb=300,ty=1200,$r="",Bm=0;function Ui(){let t={run:{file:l.run,now:l.run.now}};for(let e of ct){let n=l.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of wt){let n=l.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function ho(t=""){let e=performance.now();t&&t===$r&&e-Bm<=ty&&l.past.length||Zl(Ui()),h({future:[]}),$r=t,Bm=e}var Zl=t=>h({past:[...l.past,t].slice(-Xb)});function No(t){Zl(Em(Ui(),t,()=>t.saved??{}))}function Em(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function Xl(t,e){let n=o=>o.map(i=>Em(i,t,e));h({past:n(l.past),future:n(l.future)})}function zi(){let t=l.past.at(-1);t&&(h({past:l.past.slice(0,-1),future:[...l.future,Ui()]}),Im(t,"Undone"))}function tu(){let t=l.future.at(-1);t&&(h({past:[...l.past,Ui()],future:l.future.slice(0,-1)}),Im(t,"Redone"))}function Im(t,e){$r="",h({typed:void 0});for(let n of[...wt,...ct,"run"])ey(n,t);q(e)}function ey(t,e){let n=e[t];if(ur(t))return ny(t,n);let o=t==="run"?n?.file===l.run:l.formulas[t]!==void 0;!n||!o||(t!=="run"&&qe(t,n.file),n.file.now!==n.now&&xt(n.file,n.now))}function ny(t,e){e&&e.file===l.beside[t]&&e.file.now!==e.now&&xt(e.file,e.now)}var Uo=t=>t===l.run||ct.some(e=>l.formulas[e]===t)||wt.some(e=>l.beside[e]===t);ke("giving_way",({file:t})=>{Uo(t)&&($r="",Zl(Ui()),h({typed:void 0}))});for(let t of["copied","renamed"])ke(t,({file:e,renamed:n})=>Xl(e,n));var oy=1200,eu="",jm=0;function zo(t,e=""){let n=performance.now(),o=e&&e===eu&&n-jm<=oy&&t.past.length;y(t,{past:o?t.past:[...t.past,t.open.now],future:[]}),[eu,jm]=[e,n]}function wr(t){let e=t.past.at(-1);e&&(y(t,{past:t.past.slice(0,-1),future:[...t.future,t.open.now]}),qm(t,e,"Undone"))}function br(t){let e=t.future.at(-1);e&&(y(t,{past:[...t.past,t.open.now],future:t.future.slice(0,-1)}),qm(t,e,"Redone"))}function qm({open:t},e,n){eu="",h({typed:void 0}),xt(t,e),q(n)}function On(t){return t==="run"?l.run:t==="order"?l.order?.open:ur(t)?l.beside[t]:l.formulas[t]}var iy=t=>On(t)?.now,g=(t,e)=>$(iy(t),e),D=(t,e)=>String(g(t,e)??"");function X(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function pt(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function Hm(t,e){t==="order"&&l.order?zo(l.order,e):ho(e===void 0?"":`${t} ${e}`)}function V(t,e,n){let o=On(t);!o||$(o.now,e)===n||(Hm(t,e),xt(o,A(o.now,e,n)))}function Nm(t,e){let n=On(t);n&&(Hm(t),h({typed:void 0}),xt(n,e(n.now)))}function Re(t){ho(),h({typed:void 0});for(let[e,n]of t){let o=On(e);o&&xt(o,n(o.now))}}var nu=(t,e)=>{let{[t]:n,...o}=l.beside;h({beside:e?{...o,[t]:e}:o})};function yr(t){for(let e of wt)l.beside[e]===t&&nu(e,void 0)}async function sy(t,e){try{let n=await Ct(t,e);return J(n)&&No(n),n}catch(n){if(!(n instanceof v||n instanceof SyntaxError))throw n;return}}async function Mn(t,e,n){let o=l.beside[t];if(o?.file===n)return o;let i=await sy(e,n);return nu(t,i),i&&J(i)&&vt("unwritten",{file:i}),i?.theirs&&vt("conflict",{file:i}),i}var zm=()=>xe("studio.json");async function Jo(t=!1){let e=zm(),n=(l.files?.studios??[]).some(o=>o.file===e);l.beside.studio?.file!==e&&(n||t?await Mn("studio",Ei,e):nu("studio",void 0))}async function vr(){l.run.shipped&&await Bo(l.run);let t=zm();await Mn("studio",Ei,t)||(await ry(t),await Mn("studio",Ei,t))}async function ry(t){try{await Ao({file:t,version:null,text:ot({schema:"brimwright.studio/1"})})}catch(e){if(!(e instanceof v)||e.status!==409)throw e}ro(Ei,t)}var Um=(t,e)=>Jt(t.file)+e;async function ay(t){try{return $t((await Ot(t)).text)!==void 0}catch(e){if(!(e instanceof v))throw e;return!1}}async function kr(t){let e=l.formulas[t];if(!e)return;e.shipped&&await Bo(e);let n=String($(e.now,"/own_fats")??"");if(n){let a=Um(e,n);return Mn("own_fats",je,await ay(a)?a:n)}let o=(l.files?.fats??[]).find(a=>!a.shipped&&Jt(a.file)===Jt(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await iu(je,Um(e,"my.fats.json"),i);return V(t,"/own_fats",te(s)),Mn("own_fats",je,s)}async function ou(){l.run.shipped&&await Bo(l.run);let t="/pipe/beads/own_tips",n=String($(l.run.now,t)??"")||String($(l.beside.studio?.now,"/own_tips")??"");if(n)return Mn("own_tips",Sn,xe(n));let o=Jt(l.run.file),i=(l.files?.tips??[]).find(d=>!d.shipped&&Jt(d.file)===o),s={schema:"brimwright.tips/2",tips:[]},a=i?.file??await iu(Sn,`${o}my.tips.json`,s);return l.beside.studio?V("studio","/own_tips",te(a)):V("run",t,te(a)),Mn("own_tips",Sn,a)}async function Ji(t,e){await Mn(t===je?"own_fats":"own_tips",t,e)&&h({held_open:e})}function Fn(){let{view:t,held_open:e,beside:n}=l,o=t==="fats"?n.own_fats:t==="tips"?n.own_tips:void 0;return o&&o.file===e?o:void 0}async function xr(t,e){let n=t===je;await Ji(t,await iu(t,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[e]}:{schema:"brimwright.tips/2",tips:[e]}))}async function iu(t,e,n){let{file:o}=await ce({kind:t,name:e,text:ot(n)});return ro(t,o),o}function Jm(t,e){let n=(i,s)=>String($(i,s)??"").endsWith(te(e));for(let i of ct)t===l.beside.own_fats&&n(l.formulas[i]?.now,"/own_fats")&&V(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===l.beside.own_tips&&n(l.run.now,o)&&V("run",o,t.file)}var go=[],Vo=[],Vi=()=>go.at(-1),ru=()=>Vo.at(-1);function Rr(t){go=[...go,t],Vo=[],h({list_told:t.words}),q(t.words)}async function Km(){let t=Vi();t&&(await t.undo(),go=go.slice(0,-1),Vo=[...Vo,t],h({list_told:""}),q("Undone"),await pe())}async function Qm(){let t=ru();t&&(await t.redo(),Vo=Vo.slice(0,-1),go=[...go,t],h({list_told:t.words}),q("Redone"),await pe())}async function pe(){let[t,e]=await Promise.all([Js(),Vc()]);h({files:t,removed:e})}async function Gm(t,e){let{$schema:n,...o}=JSON.parse((await Ot(e.file)).text),i=`${e.name||Ko(e.file)}, copy`,s={...o,...t.called&&{[t.called]:i},...t.has_id?{id:crypto.randomUUID()}:{}},a=t.called?t.new_name(lo(t,s)):ve(i,au(e.file)),{file:d}=await ce({kind:t,name:a,text:ot(s),from:e.file});await pe();let c="";return Rr({words:`Copied ${e.name||e.file}.`,undo:async()=>c=await Tr(d,!0),redo:()=>Si(c)}),d}var au=t=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(t)?.[0]??"",Ko=t=>te(t).slice(0,-au(t).length||void 0),Ym=(t,e)=>Jt(t)+e+au(t),Vm=t=>[l.run,l.order?.open,...ct.map(e=>l.formulas[e]),...wt.map(e=>l.beside[e])].find(e=>e?.file===t);async function Zm(t,e,n){let o={name:e.name,note:e.note,stem:Ko(e.file)};await su(t,e.file,n),await pe();let i=Ym(e.file,n.stem);Rr({words:`Changed ${n.name||i}.`,undo:()=>su(t,i,o),redo:()=>su(t,e.file,n)})}async function su(t,e,{name:n,note:o,stem:i}){let s=Vm(e),a=s??await Ct(t,e),{note:d,...c}=a.now,p={...c,...o&&{note:o}},m=t.called?A(p,`/${t.called}`,n||void 0):p;if(ot(m)!==ot(a.now)&&(s&&Uo(s)&&ho(),s===l.order?.open&&l.order&&zo(l.order),xt(a,m),await He(a),a.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let _=Ym(e,i);if(_===e)return;let{renamed_in:w}=await zc(e,_);s&&fm(s,_);for(let b of w){let k=Vm(b);k&&await hm(k)}}async function Tr(t,e){let{removed:n}=await Jc(t,e);l.run.file===t&&Lo(),l.order?.open.file===t&&h({order:void 0});let o=wt.map(i=>l.beside[i]).find(i=>i?.file===t);return o&&yr(o),n}async function Xm(t,e){let n=await Tr(t.file,e);await pe(),Rr({words:`Removed ${t.name||t.file}.`,undo:()=>Si(n),redo:async()=>n=await Tr(t.file,!0)})}async function tf({removed:t,file:e,name:n}){await Si(t),await pe();let o="";Rr({words:`${n||e} is back.`,undo:async()=>o=await Tr(e,!0),redo:()=>Si(o)})}async function ef({removed:t,file:e,name:n}){h({removed:await Kc(t),list_told:""}),q(`${n||e} is deleted for good.`)}async function Cn(){for(let t of["pour","pipe"]){let e=$(l.run.now,`/${t}/formula`);typeof e=="string"&&e?await ly(t,Kt(e,l.files?.formulas)):qe(t,void 0)}}async function ly(t,e){if(l.formulas[t]?.file===e)return;let n=ct.map(o=>l.formulas[o]).find(o=>o?.file===e);if(qe(t,n),!n)try{let o=await lu(e);qe(t,o),J(o)&&vt("unwritten",{file:o}),o.theirs&&vt("conflict",{file:o})}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o}}async function lu(t){let e=await Ct(Co,t);return J(e)&&No(e),e}var Ki=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function Qo(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:a,indices:d,material:c}]})=>({name:s,positions:new Float32Array(t,o(a.POSITION),i(a.POSITION)*3),indices:new Uint32Array(t,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function of(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],a=[],{positions:d,indices:c}=t;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let w=3*c[p+_],b=3*c[p+(_+1)%3],k=d[w+i]-e,z=d[b+i]-e;if(k>0==z>0)continue;let Pt=k/(k-z),Zn=[1e3*(d[w]+Pt*(d[b]-d[w])),1e3*s*(d[w+o]+Pt*(d[b+o]-d[w+o]))];k>0?m.push(Zn):m.unshift(Zn)}m.length===2&&a.push([m[0],m[1]])}return a}function sf(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],a=n.get(e(i[0]))?.shift();for(;a;)s.push(a[0]),a=n.get(e(a[1]))?.shift();s.length>2&&o.push(s)}return o}function Qi(t){let e=t.positions,[n,o,i,s,a,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),a=Math.min(a,e[p+1]),d=Math.max(d,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let c=n+(o-n)*.50137;return{loops:sf(of(t,c)),left:1e3*i,right:1e3*s,floor:1e3*a,brim:1e3*d,cut_y:-1e3*c}}function rf(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>sf(of(t,n+s*o,"level"))).reduce((s,a)=>nf(a)>1.001*nf(s)?a:s)}function nf(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function uu(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,a],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(a,p)>e||Math.max(a,p)<e))for(let m of a===p?[s,c]:[s+(e-a)/(p-a)*(c-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var af=40,uy=2e3,du=0;async function lf(t){let e=await Ee({kind:"glb",gauge:t}),n=Qo(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Go(t){let[e,n]=await Promise.all([xn(t),lf(t)]),o=Qi(n);return{gauge:e,outline:o,above:rf(n,o)}}async function dy(t){let{pockets:e}=await xn(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:af},(i,s)=>`${(n*(s+1)/af).toFixed(4)} mm`);return xn({...t,depth:o})}function Se(){cy()}async function cy(){let t=$(l.run.now,"/pour/mould");if(typeof t!="string")return;let e=++du,n=Kt(t,l.files?.moulds);try{let[o,i]=await Promise.all([dy({file:n}),lf({file:n})]);e===du&&h({measured:{mould:n,gauge:o,outline:Qi(i)},measuring_failed:void 0})}catch(o){if(e!==du)return;if(!(o instanceof v))throw o;h({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Se,uy)}}var Gi=()=>h({own_fats:{}});function Ln(t){let e=Yi(t);return Array.isArray(e)?[...e,...l.fats]:l.fats}function Yi(t){let e=l.formulas[t],n=$(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=l.beside.own_fats;if(o&&[Jt(e.file)+n,n].includes(o.file))return df(o.now)??"none";let i=`${e.file}
${n}`,s=l.own_fats[i];return s||(uf(i,"waiting"),py(n,e.file).then(a=>uf(i,a)),"waiting")}var uf=(t,e)=>h({own_fats:{...l.own_fats,[t]:e}});async function py(t,e){for(let n of new Set([Jt(e)+t,t])){let o=df(await my(n));if(o)return o}return"none"}var df=t=>Array.isArray(t?.fats)?t.fats.map(fy):void 0;async function my(t){try{return $t((await Ot(t)).text)}catch{return}}var fy=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:hy(n)});function hy(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Yo=[],Zi;function Sr(){Yo.length=0;for(let{file:t,shipped:e}of l.files?.moulds??[])e||Yo.push(t);Zi===void 0&&pf()}function cf(t){let e=l.own_moulds[t];return!e&&t!==Zi&&!Yo.includes(t)&&Yo.push(t),Zi===void 0&&Yo.length&&pf(),e}async function pf(){for(;(Zi=Yo.shift())!==void 0;){let t=Zi,e=await gy(t);h({own_moulds:{...l.own_moulds,[t]:e}})}}async function gy(t){try{let{pockets:e}=await xn({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof v))throw e;let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var hf=()=>h({own_tips:{}}),cu=!1;function Xi(){return!l.tips&&!cu&&(cu=!0,ip().then(t=>h({tips:t}),gf).finally(()=>cu=!1)),l.tips??[]}function pu(t){let e=xe(t),n=l.beside.own_tips;if(n?.file===e)return ff(n.now);let o=l.own_tips[e];return o||!t||l.typed?o??[]:(mf(e,[]),Ot(e).then(({text:i})=>mf(e,ff($t(i))),gf),[])}var mf=(t,e)=>h({own_tips:{...l.own_tips,[t]:e}});function ff(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function gf(t){if(!(t instanceof v))throw t}var Dr=300,_y=5e3,yf=2e3,$y=500,_f=!1,ts=new AbortController,vf=()=>ts.abort(),kf=()=>document.visibilityState==="hidden";function Ar(){if(_f)return;_f=!0;let t=async()=>{ts=new AbortController;let e=await wy(ts).then(()=>kf()?_y:Dr,()=>ts.signal.aborted?Dr:yf);await $f(Dr),await $f(e-Dr,ts.signal),t()};t()}var $f=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),xf=()=>[l.run,...l.order?[l.order.open]:[],...l.mould?[l.mould.open]:[],...Eo()],Tf=()=>new Map(xf().flatMap(gm)),wf=()=>JSON.stringify([[...Tf().keys()],[...Nl().keys()],_r()?.run??null]);async function wy(t){let[e]=vm();e!==void 0&&await bf(e);let[n,o]=[Tf(),Nl()],i=new Map([...o,...n]),s=[...o].every(([c,p])=>i.get(c)===p),a=s&&!kf()?await by(i,t):await Di(i,_r());a.bench!==void 0&&await mo(),Ul(a.unreadable),await yy(n,a);let[d]=ym(o,s?a:await Di(o));d!==void 0&&await bf(d)}async function by(t,e){let[n,o]=[wf(),Date.now()],i=window.setInterval(()=>{(wf()!==n||Date.now()-o>Qc+yf)&&e.abort()},$y);try{return await Gc(t,_r(),e.signal)}finally{window.clearInterval(i)}}async function yy(t,{changed:e}){let n=Eo();for(let o of xf()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await vy(o,i):await El(o,i,Hl,()=>{}))}}async function vy(t,e){await El(t,e,Hl,()=>zl(t.file))&&(Gi(),ut())}async function bf(t){zl(t),await Il(),Gi(),hf(),h({measured:void 0}),Se(),Sr(),await Promise.all([Cn(),Jo(!0)]),ut()}async function Sf(t){let e=await pp();h({files:e});let n=cp(e,t.run);try{await ze(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof v?o.message:`The run opened last can no longer be read: ${String(o)}`;h({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Df(){let[t,e]=await Promise.all([np(),op()]);h({fats:t,catalogue:e})}var ky=()=>new Promise(t=>setTimeout(t,400)),mu={};async function ze(t,e="weigh"){if(!t)return h({view:"runs"});let n=mu={name:t},o=l.view;l.run.file&&J(l.run)&&await Ne();let i=await Ct(io,t);if(mu!==n||(Lo(i),gr(),await Promise.race([Rm(),ky()]),l.run!==i))return;l.view===o&&mu===n&&h({view:e}),localStorage.setItem("run",i.file),J(i)&&(No(i),An());let s=jo().finally(Se);await Promise.all([s,Cn(),Jo()]),Ar()}var Rf=()=>(l.files?.studios??[]).some(t=>t.file==="studio.json");async function Pr(t){let e=l.run.now,n=e.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};t.slice&&(o.cut={bar:{thickness:t.slice},...Rf()?{}:{kerf:""}}),Rf()||(o.note=`Losses, scales and spoilage were taken over from "${String(e.name)}": check them.`,e.spoilage!==void 0&&(o.spoilage=e.spoilage),o.losses={pour:n.pour??{}},o.scales=e.scales??{},e.money&&!l.run.shipped&&(o.money=e.money));let{file:i}=await ce({kind:io,name:ve(t.name,".run.json"),text:ot(o)});rt("set-up pour"),t.slice&&rt("set-up cut"),await ze(i,"set-up")}var xy="examples/plain_bars.run.json";function Qt(t){Gi();let e=an(l.view)?l.view:l.came_from;h({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function es(t){let e=["pour","pipe"].find(n=>l.run.file&&l.formulas[n]?.file===t);if(e)return Qt(e);l.run.file||await ze(xy,"reading"),await Ty(t)}async function Ty(t){let e={past:l.past,future:l.future};h({run_steps:e,past:[],future:[]});try{qe("apart",await lu(t))}catch(n){throw h({...e,run_steps:void 0}),n}h({plan:void 0,complaint:void 0}),Qt("apart"),jo()}async function Ry(){let t=l.formulas.apart!==void 0;return await Or()?(h({view:t?"weigh":l.came_from,typed:void 0}),!0):!1}async function Or(){return l.formulas.apart?await Sy()?(jo(),!0):!1:!0}async function Sy(){try{await Ue()}catch(e){if(!(e instanceof v))throw e;return h({complaint:e.complaint}),!1}if(l.formulas.apart?.theirs)return q("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;qe("apart",void 0);let t={...l.dangers,apart:[]};return h({dangers:t,...l.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Af(t){let e=l.view==="formula"&&l.formulas[l.formula_of]===t,n=l.formulas.apart===t;for(let o of["pour","pipe"])l.formulas[o]===t&&qe(o,void 0);n&&await Or(),e&&h({view:n?"formulas":"set-up",typed:void 0})}async function fu(t){let{file:e}=l.formulas.apart;await Ry()&&V("run",`/${t}/formula`,e)}var Dy=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Pf=t=>Mf(Dy(t));async function Of(t,e){let{$schema:n,...o}=JSON.parse((await Ot(t)).text);await Mf({...o,name:e},t)}async function Mf(t,e){let n=ve(String(t.name),".formula.json"),{file:o}=await ce({kind:Co,name:n,text:ot(t),from:e});await es(o)}var Ay=30,Ff=0,hu=!1,gu=!1;function _u(t,e,n){let o=e==="mesh"?l.mesh:void 0;h({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),wu()}var Je=()=>h({mould:void 0,mesh:void 0}),Zo=(t,e,n)=>_u(lo(Vt,t),e,n);async function Cf(t,e){let n=await Ct(Vt,t,e?crypto.randomUUID():t),o=String(n.now.name??t);e&&y(n,{now:{...n.now,name:""}}),_u(n,"form",e?`A copy of ${o}`:`Change ${o}`)}async function Lf({id:t,file:e,text:n}){let o=e?await Ct(Vt,e,t):lo(Vt,JSON.parse(n),t);_u(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var et=()=>l.mould,I=()=>et().open.now;function kt(t,e){zo(et(),t),xt(et().open,A(I(),t,e))}var Wf=()=>wr(et()),Bf=()=>br(et()),Py=["name","note","owned","unmould_after"];function $u(t){let e=I(),n=Object.keys({...t,...e}).filter(a=>t?.[a]!==e[a]);(!t||n.some(a=>!Py.includes(a)))&&y(et(),{is_old:!0});let i=n.some(a=>et().complaint?.field===`/${a}`),s=n.some(a=>!["name","note"].includes(a));(et().is_old||i||s)&&wu()}function wu(){clearTimeout(Ff),Ff=window.setTimeout(()=>{Oy()},Ay)}async function Oy(){if(hu)return void(gu=!0);let{mould:t}=l;if(!t)return;let e=t.open.now;if(!(!ye(e,"shape")&&!ye(e,"mesh"))){if(Bi(e).length)return y(t,{complaint:void 0});hu=!0;try{let n=Vt.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Go(o);t.open.now===e&&y(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof v))throw n;t.open.now===e&&bu(n)}finally{hu=!1,gu&&wu(),gu=!1}}}function bu(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,a=e?`${n}; ${o}`:t.message;y(et(),{complaint:{field:rr(I(),e),line:a,keep:i&&{...i,at:rr(I(),i.at)},about:s===void 0?void 0:rr(I(),`${e}/${s}`)}})}var Ef={};async function ns(t){let e=Ef={name:t},n=l.view;if(l.order?.open.file!==t){l.order&&J(l.order.open)&&await Ne(l.order.open);let o=await Ct(so,t);if(Ef!==e)return;let i=J(o)?[o.saved??{}]:[];h({order:{open:o,past:i,future:[],times:""},typed:void 0}),J(o)&&An(o)}l.view===n&&h({view:"order",typed:void 0}),Ar()}function If(){h({order:void 0,...l.view==="order"?{view:"orders"}:{}})}async function jf(t){let e={schema:"brimwright.order/1",id:crypto.randomUUID(),for:t,lines:[]},n=so.new_name(lo(so,e)),{file:o}=await ce({kind:so,name:n,text:ot(e)});await ns(o)}var Lt=()=>l.order,qf=()=>wr(Lt()),Hf=()=>br(Lt());var Mr=t=>Object.values(l.formulas).includes(t),Xo=t=>Object.values(l.beside).includes(t),Nf=t=>`${String($(t,"/pour/formula"))}
${String($(t,"/pipe/formula"))}`;function My(t,e){$(t,"/pour/mould")!==$(e,"/pour/mould")&&Se(),Nf(t)!==Nf(e)&&Cn(),ut(),An()}var Fy=ut;function Cy(t,e){for(let n of["pour","pipe"]){if(l.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String($(s,o)??"").endsWith(te(e))?A(s,o,t.file):s;Xl(l.run,i),i(l.run.now)!==l.run.now&&xt(l.run,i(l.run.now))}}async function Ly(t){t===l.run?(Lo(),localStorage.removeItem("run"),h({view:"runs"})):t===l.mould?.open?Je():t===l.order?.open?If():Xo(t)?yr(t):await Af(t),await pe(),l.run.file&&ut()}function Uf(){ke("edited",({file:t,before:e})=>{t===l.run?My(e,t.now):Mr(t)||Xo(t)?Fy():t===l.mould?.open?$u(e):t===l.order?.open&&An(t)}),ke("gave_way",({file:t})=>{if(t===l.mould?.open)return $u();t!==l.order?.open&&(t===l.run&&(Se(),Cn().then(ut)),ut())}),ke("left_deleted",({file:t})=>{Ly(t)}),ke("unwritten",({file:t})=>{t===l.run||t===l.order?.open?Ne(t):(Mr(t)||Xo(t))&&ut()}),ke("conflict",({file:t})=>{(Mr(t)||Xo(t))&&h({is_old:!0})}),ke("renamed",({file:t})=>{Xo(t)&&l.held_open!==void 0&&h({held_open:t.file}),t===l.run&&(localStorage.setItem("run",t.file),Se(),Cn()),ut()}),ke("copied",({file:t,from:e})=>{Mr(t)&&Cy(t,e),Xo(t)&&Jm(t,e),l.held_open===e&&h({held_open:t.file}),t===l.run&&(Dm(e),localStorage.setItem("run",t.file),Jo().then(ut))})}var De=r`<span aria-hidden="true">⚠</span> Danger`;function os(t,e="",n){let o=Wn(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${De}</strong> ${i}</p>`)}
  </div>`:u}function Wn(t,e){let n=t==="pour"?"pipe":"pour";return l.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function zf(){let t=ue(l.view)||l.view==="order"||ji()==="apart",e=l.dangers.run.map(({text:n})=>({from:t?`In the run "${String(l.run.now.name??l.run.file)}": `:"",text:n}));return[...l.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var Jf=()=>zf().length>0;function Vf(){let t=zf(),e=Ey();return!t.length&&!e?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:n,text:o})=>r`<p class="danger"><strong>${De}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${Wy()?r`<button type="button" @click=${By}>To the question</button>`:u}
          </div>`:u}
  </section>`}var Wy=()=>cn(ji())!==void 0&&!ue(l.view);function By(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function Ey(){if(!l.run.file||l.view==="reading")return"";let t=cn(ji());return t&&uo(t)?`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:t?`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:l.is_old&&l.changed_beside?`${l.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var fn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Fr=t=>(...e)=>({_$litDirective$:t,values:e}),ti=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:Iy}=Fp,Kf=t=>t;var Gf=t=>t.strings===void 0,Qf=()=>document.createComment(""),ei=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(Qf(),i),a=o.insertBefore(Qf(),i);n=new Iy(s,a,t,t.options)}else{let s=n._$AB.nextSibling,a=n._$AM,d=a!==t;if(d){let c;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(c=t._$AU)!==a._$AU&&n._$AP(c)}if(s!==i||d){let c=n._$AA;for(;c!==s;){let p=Kf(c).nextSibling;Kf(o).insertBefore(c,i),c=p}}}return n},Bn=(t,e,n=t)=>(t._$AI(e,n),t),jy={},Cr=(t,e=jy)=>t._$AH=e,Yf=t=>t._$AH,Lr=t=>{t._$AR(),t._$AA.remove()};var F=Fr(class extends ti{constructor(t){if(super(t),t.type!==fn.PROPERTY&&t.type!==fn.ATTRIBUTE&&t.type!==fn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Gf(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===Mt||e===u)return e;let n=t.element,o=t.name;if(t.type===fn.PROPERTY){if(e===n[o])return Mt}else if(t.type===fn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return Mt}else if(t.type===fn.ATTRIBUTE&&n.getAttribute(o)===e+"")return Mt;return Cr(t),e}});var Ht=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function hn(t,e){let n=Ht(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>Ht(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Wr(t,e){let n=Ht(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}var Er=28.349523125,eh=25.4,qy=29.5735295625;function Ve(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function S(t,e){return Hy(Ve(t,e))}var Hy=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function me(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${Ve(t,e)} %`:yu(t)?"just below 0 %":"0.0 %"}var yu=t=>t<0||Object.is(t,-0),nh=t=>Math.abs(t-Math.round(t))<1e-6;function Zf(t){return t?[0,1,2,3].find(e=>nh(t*10**e))??3:0}function Xf(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function Ny(t){return[0,1,2].find(e=>t.every(n=>nh(n*10**e)))??3}function Ir(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function Wt(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-Ny([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var oh=.001;function Br(t,e,n,o,i=1e-9){let s=10**n;return Ve(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var th=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function Uy(t){if(!th.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return th.find(e=>Math.abs(e*Er-t)<.6*oh)}function mt(t,e,n="nearest"){let o=e.scale_step_g||.1,i=Uy(o),s=Math.min(.6*oh,o/2),a=i?Br(e.g,1,Xf(o),n):Br(e.g,1,Zf(o),n,s),d=i?Br(e.g,Er,Zf(i),n,s):Br(e.g,Er,Xf(o/Er),n),[c,p]=[`${e.g_text??a} g`,`${e.oz_text??d} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,c]:Ir(t,c,p)}var E=(t,e,n=1,o="nearest")=>mt(t,{g:e,scale_step_g:10**-n},o);function St(t,e,n=1){return Ir(t,`${Ve(e,n)} ml`,`${Ve(e/qy,2)} US fl oz`)}function Tt(t,e){return Ir(t,`${S(e,1)} mm`,zy(e))}function zy(t){let e=Math.round(Math.abs(t)/eh*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),a=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",a].filter(Boolean).join(" ")} in`}var vu=([t])=>t,O=([t,e])=>e?`${t} (${e})`:t;function ih(t,e){return Ir(t,`${Ve(e,0)} \xB0C`,`${Ve(e*1.8+32,0)} \xB0F`)}function Ae(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??eh;return n*o}function Ke(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Qe=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function bt(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function Dt(t){return`${new Date(`${t}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${bt(t)}`}var sh=t=>new Date(`${t}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),is=t=>t.replaceAll(/\d{4}-\d\d-\d\d/g,bt);function jr(t){let e=Math.ceil(t),[n,o]=[Math.floor(e/60),e%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function En(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}function lh(t){let e=Ae(t.round?.radius);if(e)return rh(e,R`<circle class="plain" r=${e} />`);let n=Jy(t);if(!n)return u;let o=Math.max(...n.map(([i,s])=>Math.hypot(i,s)));return o>0?rh(o,R`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var rh=(t,e)=>r`<svg class="tip" viewBox="${-1.1*t} ${-1.1*t} ${2.2*t} ${2.2*t}" aria-hidden="true">
    ${e}
  </svg>`;function Jy({star:t,outline:e}){if(t&&typeof t=="object"&&!Array.isArray(t))return Vy(t);if(!Array.isArray(e))return;let n=e.map(o=>[ah(o,"x"),-ah(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function ah(t,e){let n=String(t[e]??"").trim();return(n.startsWith("-")?-1:1)*(Ae(n.replace(/^-/,""))??NaN)}function Vy({points:t,outer_radius:e,inner_radius:n}){let[o,i]=[Ae(e),Ae(n)];if(!(!o||!i||typeof t!="number"||t<3||t>60))return Array.from({length:2*t},(s,a)=>{let d=Math.PI*a/t,c=a%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var ku=!1;function uh(t){let{plan:e,explanation:n}=l,o=n?.of!==e;return o&&!ku&&Qy(),{workings:Ky(n?.workings,t),complaint:n?.complaint,is_old:o}}function Ky(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function Qy(){let{plan:t,planned:e}=l;if(!(!t||!e)){ku=!0;try{let{how:n}=await Yc(e);h({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof v))throw n;h({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{ku=!1}}}var dh=R`<path class="wall" d="M30 10l8 52h44l8-52" />`,xu={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:R`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${dh}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:R`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:R`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${dh}<path class="measure" d="M20 10h80" />`}};var Tu=t=>`term ${t}`;function gn(t){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${l.open.has(Tu(t))?"true":"false"}
    aria-label="What ${xu[t].name} means"
    @click=${()=>qt("open",Tu(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Pe(t){if(!l.open.has(Tu(t)))return u;let{name:e,words:n,drawing:o}=xu[t];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var In=t=>r`<span class="term">${gn(t)}${Pe(t)}</span>`;function M({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:a,term:d}){let c=l.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>qt("open",t)}
    >
      <span class="name">${e}${a?r`<small>${a}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${l.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?r`${gn(d)}${Pe(d)}`:u}
    ${c?r`<div class="sum" id=${p}>${i?qr(i):Ru(o)}</div>`:u}
  </div>`}var _o=(t,e,n)=>M({key:t,label:e,shown:["",""],of:n});function Ru(t){let{workings:e,complaint:n,is_old:o}=uh(t);return e.length?r`<div class=${o?"old":""}>${e.map(qr)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function qr({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let a=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${e.map(({name:d,value:c,from:p})=>r`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${a?r`<p class="comes-to">${a}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var $o,ss=[],_n=()=>$o!==void 0;function oe(t,e,n,o){if(!$o||$o.some(s=>s.id===n))return;let i=ss.flatMap(({part:s})=>s??[]);$o.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:ss.flatMap(({fold:s})=>s??[])})}function fe(t,e){ss.push(t);try{return e()}finally{ss.pop()}}var ch=()=>{},ph=t=>{ch=t},Hr,Gy=()=>[l.run.now,...Object.values(l.formulas).map(t=>t.now),...Object.values(l.beside).map(t=>t.now),l.formulas.apart,l.plan,l.fats,l.files];function ni(){if(_n())return[];let t=Gy();return Hr?.of.length===t.length&&t.every((n,o)=>n===Hr.of[o])||(Hr={of:t,wanted:Yy()}),Hr.wanted}function Yy(){$o=[],ss=[];try{return ch(),$o}finally{$o=void 0}}function mh(t){l.touched.has(t)||h({touched:new Set(l.touched).add(t)})}function fh(t,e){if(l.has_asked)return!1;let n=ni().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!l.touched.has(o.id))}var N=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function Nr(t){if(t==="order")return l.order?.quoted?.complaint??l.order?.days?.complaint;let e=(n,o)=>o===l.plan?n?.complaint:void 0;return l.complaint??e(l.quoted,l.quoted?.of)??e(l.run_days,l.run_days?.of[0])}function Bt(t,e){let n=Nr(t);if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return he(t)&&!fh(t,n.field)?Q(n):void 0}function yt(t,e){return Nr(t)?.field===e?Bt(t,e):void 0}function he(t){let e=Nr(t),n=On(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function Zy(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function Ge(){let t=Nr();if(t)for(let e of["run",...ct,...wt])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Bt(e,n)&&document.getElementById(N(e,n));if(o)return o}}function Xy(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=tv(t,n);return o&&Qe(e)?`${e.trim()} ${o}`:e}function tv(t,e){return Ke(g(e,t.at))||t.unit||""}var ft=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,Su=!1;addEventListener("pointerdown",()=>Su=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>Su=!1,!0);var ev=()=>h({typed:void 0});function rs(t){let{id:e}=t.target,n=()=>{ev(),mh(e)};Su?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var nv=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,ov=({unit:t="",told:e=""},n)=>[t.replace("cm2","cm\xB2"),e,n?"required":""].filter(Boolean).join(", ")||u;function f(t){let e=t.of??"run",n=N(e,t.at),o=g(e,t.at),i=nv(o),s=l.typed?.key===n,a=s?l.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||a.trim()===""&&(!t.optional||t.is_due===!0);d&&oe(e,t.at,n,t.label);let c=Bt(e,t.at),p=w=>{let b=w.target.value;h({typed:{key:n,text:b}});let k=Xy(t,b);V(e,k===void 0&&t.takes_part?Zy(e,t.at):t.at,k)},_=(s&&typeof o=="string"&&o!==a?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${c?"wants":""}"
  >
    ${Du(r`<label for=${n} data-said=${ov(t,d)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      type=${t.date?"date":"text"}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${F(a)}
      @input=${p}
      @blur=${rs}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.date?u:t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${ft(n,c,_)} ${t.term?Pe(t.term):u}
  </div>`}var Du=(t,e)=>e?r`<div class="labelled">${t}${gn(e)}</div>`:t;function Nt(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var U=t=>()=>document.getElementById(t),Z=(t,e)=>U(N(t,e)),Oe=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),iv=()=>document.activeElement;function G(t){requestAnimationFrame(()=>Nt(t()))}function ie(t,e,n,o=iv){q(e),Nm(t,n),G(o)}function B(t,e,n,o,i){ie(t,e,s=>A(s,n,o),i)}var ge=(t,e,n)=>`${N(t,e)}-${n}`;function C(t,e){let n=yt(t,e);return n?r`<p id=${N(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var hh=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function at(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${hh(e,n,o)}</div>`}function T({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:a,puts:d,then:c,hint:p,optional:m,term:_}){let w=i?ge(t,n,e.replaceAll(/\W+/g,"-")):N(t,o),b=s===void 0&&!m;b&&oe(t,o,w,e);let k=i?void 0:yt(t,o),z=Pt=>{if(Pt===s)return;let Zn=a.find(([sb])=>sb===Pt)[1];B(t,`${e}: ${Zn}`,n,d(Pt),c&&Z(t,c(Pt)))};return r`<div class="field asked ${k?"wants":""}">
    ${Du(r`<p class="question" id="${w}-label" data-said=${b?"required":u}>${e}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${w}
      tabindex="-1"
      aria-labelledby="${w}-label"
      aria-describedby=${k||p?`${w}-said`:u}
    >
      ${hh(s,a,z)}
    </div>
    ${ft(w,k,p)} ${_?Pe(_):u}
  </div>`}function Au(t,e,n,o){let i=N("run",t),s=yt("run",t),a=()=>B("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${a}
      >
        ${e}
      </button>
    </div>
    ${ft(i,s)}`}function gt({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:a,take:d}){let c=N(e,n),p=Bt(e,n),m=a??D(e,n);!m&&!s&&oe(e,n,c,t);let _=!m||o.some(([k])=>k===m),w=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${c}
      aria-required=${s?u:"true"}
      @change=${k=>{let z=k.target.value;d?d(z):V(e,n,z||!s?z:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${w.filter(([k])=>k||s||!m).map(([k,z])=>r`<option value=${k} .selected=${F(k===m)}>${z}</option>`)}</select
    >${ft(c,p)}
  </div>`}function oi(t,e,n=[]){let o=Kt(D("run",e),n);return gt({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Ut({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:a}){let d=ge(t,e,"part"),c=ge(t,e,"add"),p=()=>fe({part:o},a);return g(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${c} @click=${()=>B(t,`${o} added`,e,s,Oe(d))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>B(t,`${o} removed`,e,void 0,U(c))}
      >
        Remove
      </button>
    </div>
    ${C(t,e)} ${p()}
  </div>`}var gh=(t,e)=>`folded ${t} ${e}`,Et=(t,e)=>rt(gh(t,e));function P({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let a=gh(t,e);if(_n())return r`${fe({fold:a},s)}`;(i||n.some(p=>Bt(t,p)))&&rt(a);let d=l.open.has(a);return r`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),qt("open",a)}}>${o}</summary>
    ${d?r`<div class="folded">${s()}</div>`:u}
  </details>`}var x=({of:t="run",at:e})=>X(t,e),W=({of:t="run",at:e},n)=>ge(t,`${e}/${n}`,"item"),Ur=({of:t="run",at:e},n,o)=>ge(t,`${e}/${n}`,o),sv=({of:t="run",at:e})=>N(t,e);function as(t,e,n,o){let{of:i="run",at:s,stays:a,and:d=c=>c}=t;ie(i,e,c=>d(A(c,s,n.length||a?n:void 0),n.length),o)}function j(t,e,n){let o=x(t);as(t,`${n} added`,[...o,e],Oe(W(t,o.length)))}function rv(t,e,n){let o=x(t).filter((a,d)=>d!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);as(t,`${n} removed`,o,s?U(Ur(t,i,"drop")):Z(t.of??"run",t.at))}function av(t,e,n,o){let i=[...x(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let a=n<0?"earlier":"later",c=e+n===0||e+n===i.length-1?n<0?"later":"earlier":a;as(t,`${o} moved ${a}`,i,U(Ur(t,e+n,c)))}function H(t,e,n){let o=x(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let a=(d,c,p)=>r`<button
      type="button"
      id=${Ur(t,e,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>av(t,e,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${a(-1,"earlier",e===0)} ${a(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${Ur(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>rv(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function Y(t,e,n){let o=sv(t),i=yt(t.of??"run",t.at);return r`${ft(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}var it=()=>l.beside.studio!==void 0,ls=({run:t})=>g("run",t),Pu=({studio:t})=>g("studio",t);function us(t){return ls(t)===void 0&&it()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var Ye=t=>ls(t)??Pu(t),At=(t,e)=>f({...e,...us(t)}),Ou=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function ds(t,e=""){return t===void 0||Ou(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>ds(o,`${e}/${L(n)}`))}function $n(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))$(t,n)!==void 0&&Ou($(t,n))&&(t=A(t,n,void 0));return t}var ii=(t,e)=>e.reduce((n,o)=>$n(A(n,o,void 0),o),t);function $h(t){let e=new Map;return t.flatMap(n=>ds(ls(n)).flatMap(([o,i])=>{let s=n.studio+o,a=e.get(s)??g("studio",s);return Ou(a)||String(a).startsWith("?")||a===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function Mu(t){it()||await vr();let e=$h(t);Re([["studio",n=>e.reduce((o,[,i,s])=>A(o,i,s),n)],["run",n=>ii(n,e.map(([o])=>o))]]),q("Kept in the studio")}function lv(t){let e=t.flatMap(o=>ds(Pu(o)).map(([i,s])=>[o.run+i,s]));Re([["run",o=>e.reduce((i,[s,a])=>$(i,s)===void 0?A(i,s,a):i,o)]]),q("Said in this run only")}function uv(t){let e=t.flatMap(n=>ds(ls(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Re([["run",n=>ii(n,e)]]),q("Taken from the studio again")}var _h=t=>ds(t).length>0;function jn(t,e){if(!it())return u;let n=e.some(s=>_h(ls(s))),o=e.some(s=>_h(Pu(s))),i=(s,a)=>r`<button type="button" aria-label="${t}: ${s}" @click=${a}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&$h(e).length?i("Keep in my studio",()=>{Mu(e)}):u}
    ${n&&o?i("As in the studio",()=>uv(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>lv(e)):u}
  </span>`}function Fu(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=l.files?.moulds;return e.find(o=>Kt(o,n)===Kt(t,n))??t}var dt=(t,e)=>Object.keys(g(t,e)??{}),wh=(t,e)=>`${N(t,e)}-name`;function si({of:t,at:e,label:n,add:o,blank:i,then:s}){let a=wh(t,e),d=()=>{let c=document.getElementById(a),p=c.value.trim();if(!p)return c.focus();if(c.value="",dt(t,e).includes(p))return Nt(s(p)());B(t,`${p} added`,`${e}/${L(p)}`,i,s(p))};return r`<div class="row">
    <div class="field">
      <label for=${a}>${n}</label>
      <input
        id=${a}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}function cs({of:t,at:e,name:n,label:o,also:i=a=>a,put:s}){let a=`${N(t,e)}-${dt(t,e).indexOf(n)}-called`;return Lu({id:a,name:n,label:o,taken:dt(t,e),take:d=>{let c=p=>i(ps(p,e,n,d),d);s?s(c,d):ie(t,`${n} is called ${d}`,c)}})}var Cu;function Lu({id:t,name:e,label:n,taken:o,take:i,hint:s}){let a=c=>{let p=c.target.value.trim(),m=p!==e&&o.includes(p);Cu=m?{id:t,words:`Another is called ${p} already`}:void 0,h({typed:void 0}),!(!p||m||p===e)&&(i(p),q(`${e} is called ${p}`),G(U(t)))},d=Cu?.id===t?Cu.words:void 0;return r`<div class="field ${d?"wants":""}">
    <label for=${t}>${n}</label>
    <input
      id=${t}
      .value=${F(l.typed?.key===t?l.typed.text:e)}
      @input=${c=>h({typed:{key:t,text:c.target.value}})}
      @change=${a}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d||s?`${t}-said`:u}
    />
    ${ft(t,d,s)}
  </div>`}function ps(t,e,n,o){let i=Object.entries($(t,e)??{}).map(([s,a])=>[s===n?o:s,a]);return A(t,e,Object.fromEntries(i))}function wo(t,e,n,o=n){let i=s=>$n(A(s,`${e}/${L(n)}`,void 0),e);return r`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>ie(t,`${o} removed`,i,U(wh(t,e)))}
    >
      ×
    </button>
  </div>`}var bo="/pipe/beads",Fe=`${bo}/tip`,dv={of:"run",at:Fe},Ze={at:`${bo}/moves`,in_order:!0},Wu="\0own",kh={tip:"",bead_to_opening:"",moves:[]},Me=(t,e)=>({name:t,label:e,kind:"length"}),bh={name:"count",label:"How many",kind:"count"},yh=Me("circle_radius","Radius of their circle"),Bu={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Me("diameter","Diameter"),Me("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Me("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Me("start_radius","Radius at the start"),Me("end_radius","Radius at the end"),Me("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Me("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[bh,yh,Me("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[bh,yh,Me("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Me("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function xh(t){return r`${pv()} ${Eu()?Jr(dv):_v()}
    ${f({label:"Bead \xF7 tip opening",at:`${bo}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${x(Ze).map((e,n)=>xv(e,n,t))}</div>
    ${Sv()}`}var Eu=()=>typeof g("run",Fe)=="object",Iu=()=>String(g("run",`${bo}/own_tips`)??g("studio","/own_tips")??"");function cv(){let t=Iu(),e=t?pu(t):[];return g("run",`${bo}/own_tips`)===void 0?[...e,...Xi()]:e}function pv(){let t=n=>n===Wu?B("run","a tip of your own",Fe,{name:"",round:{radius:""}},fv):V("run",Fe,n),e=cv().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${gt({label:"Tip",at:Fe,answers:[...e,[Wu,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:Eu()?Wu:void 0})}
  ${Eu()?u:P({name:"tips",pointers:[`${bo}/own_tips`],summary:"Tips of a file of your own",body:()=>f({label:"File of tips",at:`${bo}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var mv=ge("run",Fe,"own"),fv=Oe(mv);async function hv(){let t=g("run",Fe);if(!await ou())return;let e=X("own_tips","/tips"),n=gv(String(t.name).trim()||"My tip",e);Re([["own_tips",o=>A(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>A(o,Fe,n)]]),q(`${n} kept in ${l.beside.own_tips.file}`)}function gv(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...Xi()].some(i=>i.name===o))return o}}function _v(){let t=D("run",Fe),e=Iu();if(!t||!e||!pu(e).some(o=>o.name===t))return u;let n=X("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{ou()}}>Change this tip of my own</button>`:Jr({of:"own_tips",at:`/tips/${n}`})}var vh=[["round","Round"],["star","Star"],["outline","Another outline"]],zr={x:"",y:""},$v={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[zr,zr,zr]};function Jr({of:t,at:e}){let n=vh.map(([s])=>s),o=n.find(s=>g(t,`${e}/${s}`)!==void 0),i=s=>({...pt(t,e,n),[s]:$v[s]});return r`<div class="part" id=${ge(t,e,"own")} role="group" aria-label="My own tip">
    ${C(t,e)} ${wv({of:t,at:e})}
    ${T({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:vh,puts:i})}
    ${o?vv({of:t,at:e},o):u}
    ${P({of:t,name:t==="run"?"hand":`hand ${e}`,pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>yv({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{hv()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${l.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var wv=({of:t,at:e})=>t==="run"?f({label:"What you call the tip",at:`${e}/name`}):Lu({id:N(t,`${e}/name`),name:D(t,`${e}/name`),label:"What you call the tip",taken:X("own_tips","/tips").map(({name:n})=>String(n)),take:n=>bv(e,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function bv(t,e){let n=D("own_tips",`${t}/name`),o="/hand",i=xe(Iu())===l.beside.own_tips?.file,s=i&&g("run",Fe)===n,a=i&&g("studio",`${o}/${L(n)}`)!==void 0;Re([["own_tips",d=>A(d,`${t}/name`,e)],...s?[["run",d=>A(d,Fe,e)]]:[],...a?[["studio",d=>ps(d,o,n,e)]]:[]])}function yv({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return r`<div class="row">
      ${f({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?f({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button
            type="button"
            @click=${()=>B(t,"correction removed",n,void 0,Oe(ge(t,e,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${f({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function vv(t,e){if(e==="outline")return kv(t);let{of:n,at:o}=t,i=(s,a)=>f({of:n,label:a,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${f({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function kv({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${x(n).map((o,i)=>r`<div class="row" id=${W(n,i)}>
          ${f({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${f({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${H(n,i,`corner ${i+1}`)}
        </div>`)}
    ${Y(n,"One more corner",()=>j(n,zr,"corner"))}`}function xv(t,e,n){let o=Bu[String(t.move)],i=`${Ze.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${W(Ze,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${H(Ze,e,s)}
    </div>
    ${C("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(a=>Tv(i,a))}
      ${f({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${Rv(e,n)}
  </div>`}function Tv(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,a=o==="length"||o==="signed"?"mm":void 0;return f({label:n,at:`${t}/${e}`,unit:a,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function Rv(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==x(Ze).length)return u;let i=o.length_mm>0?`${S(o.length_mm/10,1)} cm of bead`:"";return M({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:St(l.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function Sv(){let t=o=>({move:o,...Object.fromEntries(Bu[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=N("run",Ze.at),n=yt("run",Ze.at);return x(Ze).length||oe("run",Ze.at,e,"What the tip does"),r`${ft(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(Bu).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>j(Ze,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function Xe(t,e=()=>{}){if(!t.theirs)return u;let n=uo(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{dm(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>cm(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>um(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function tn(t){if(t.theirs||!t.set_aside||Uo(t)&&!t.is_taken)return u;let e=()=>{Uo(t)&&ho(),pm(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>am(t)}>Close</button>`:u}
    </div>
  </section>`}var Vr={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function Rh(t,e){let n=Yi(t);if(!Array.isArray(n)||!n.some(d=>d.id===e))return u;let i=X("own_fats","/fats").findIndex(d=>d.id===e);if(!(i>=0&&l.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{Dv(t,e)}}>Change this fat of my own</button>`;let a=`/fats/${i}`;return P({of:"own_fats",name:e,pointers:[a],summary:`My own fat, in ${l.beside.own_fats.file}`,body:()=>fe({part:D("own_fats",`${a}/name`)||"Your own fat"},()=>ju(a))})}async function Dv(t,e){await kr(t),Et("own_fats",e);let n=X("own_fats","/fats").findIndex(o=>o.id===e);G(U(`f-own_fats-fats-${n}-name`))}var Av=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function ju(t){let e=(n,o,i,s=!1)=>f({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${C("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${T({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:D("own_fats",`${t}/kind`)||void 0,answers:Av,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${Pv(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${P({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>Ov(t)})}`}function Pv(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,a=!1)=>f({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:a,unit:"mg KOH/g"});return r`${T({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function Ov(t){let e=(o,i,s,a)=>{let d=`${t}/${o}`,c=g("own_fats",d)!==void 0,p=()=>B("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?r`${C("own_fats",d)}${a()}`:u}
    </div>`},n=(o,i,s,a=!1)=>f({of:"own_fats",label:i,at:`${t}/${o}`,unit:s,number:a,short:!0});return r`<div class="items">
      ${e("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${t}/iodine_value`)=="object"?r`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${e("density","Density when molten",{at:"",low:"",high:""},()=>r`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${e("melting_range","Melting range",{low:"",high:""},()=>r`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${Mv(`${t}/fatty_acids`)}
    <div class="row">
      ${f({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${f({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var Th=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function Mv(t){let e=Object.keys(g("own_fats",t)??{}),n=Th.filter(([a])=>!e.includes(a)),o=a=>Th.find(([d])=>d===a)?.[1]??a,i=a=>`${t}/${L(a)}`,s=a=>{let d=Array.isArray(g("own_fats",i(a))),c=(p,m)=>f({of:"own_fats",label:`${o(a)}, ${m}`,at:`${i(a)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${d?r`${c(0,"lowest")} ${c(1,"highest")}`:f({of:"own_fats",label:o(a),at:i(a),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(a)}"
        @click=${()=>B("own_fats",`${o(a)} removed`,e.length>1?i(a):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${C("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${gt({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:a=>a&&B("own_fats",`${o(a)} added`,i(a),["",""])})}
    </div>`}function ri(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[a]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=a;return{...s,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:a,place:"batches.0",whippings:c?.whippings??[],whole:t}}var K=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,Fv=t=>t.cut?["loaf","loaves"]:["cast","casts"];function en(t,{pieces:e,casts:n}){let o=t.cut?K(e,"bar"):K(e,"piece");return n===e?o:`${o} from ${K(n,...Fv(t))}`}var Cv=t=>t===1?"once":`${t} times`,qu=t=>t.batches.length>1,It=t=>t.pieces.batches>1;function Ce(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}function ht(t){return It(t.whole)?`one batch, ${en(t.whole,t.batch)}`:""}var Sh=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function Hu(t,e){return Sh(t)?`${en(t.whole,e)}${e.count>1?`, whipped ${Cv(e.count)}`:""}`:""}function Kr(t,e){let n=Hu(t,e);return n&&`one whipping: ${n}`}var Dh=t=>It(t.whole)||Sh(t),Qr=(t,e)=>`${K(t,"filling")} of ${K(e,"cavity","cavities")}`;var Ah=t=>[...l.files?.runs??[],...l.files?.orders??[],...l.files?.formulas??[]].find(e=>e.file===t)?.name||t;function Gr(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${Ce(e.map(Ah))}.</p>`:u}function ai(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Ce(e.map(Ah))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}var ms={of:"own_fats",at:"/fats",least:1},Yr={of:"own_tips",at:"/tips",least:1},yo=({of:t,at:e})=>X(t,e);function Ph(t){return Mh(t,ms,"fats",e=>{let n=`/fats/${e}`;return P({of:"own_fats",name:String(yo(ms)[e].id),pointers:[n],summary:r`<span
        >${D("own_fats",`${n}/name`)||"Without a name"}<small
          >${Lv(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>ju(n)})})}function Lv(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"&&!Array.isArray(e)?e:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(e??"");return o?`${o} mg KOH/g`:"saponification value not given"}function Oh(t){return Mh(t,Yr,"tips",e=>{let n=`/tips/${e}`;return r`<div class="tip-row">
      ${lh(yo(Yr)[e])}
      ${P({of:"own_tips",name:`tip ${e}`,pointers:[n],summary:D("own_tips",`${n}/name`)||"Without a name",body:()=>Jr({of:"own_tips",at:n})})}
    </div>`})}function Mh(t,e,n,o){let i=l.files?.[n].find(({file:a})=>a===t.file),s=a=>String(yo(e)[a].name||`number ${a+1}`);return r`${Xe(t)} ${tn(t)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${t.file}</h2>
      ${ai(i)}
      ${t.shipped?r`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${yo(e).map((a,d)=>r`<div class="held" id=${W(e,d)} role="group" aria-label=${s(d)}>
              ${o(d)} ${H(e,d,s(d))}
            </div>`)}
      </div>
    </section>`}var Nu=(t,e)=>({...Vr,id:Wr(t,e),name:t});function Fh(t){let e=Nu(t,[...l.fats,...yo(ms)]);j(ms,e,t),Et("own_fats",String(e.id)),G(Z("own_fats",`/fats/${yo(ms).length-1}/source`))}var Uu=t=>({name:t});function Ch(t){j(Yr,Uu(t),t);let e=yo(Yr).length-1;Et("own_tips",`tip ${e}`),G(Oe(ge("own_tips",`/tips/${e}`,"own")))}var Lh=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},Zr=Fr(class extends ti{constructor(t){if(super(t),t.type!==fn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],a=0;for(let d of t)i[a]=o?o(d,a):a,s[a]=n(d,a),a++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=Yf(t),{values:s,keys:a}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=a,s;let d=this.ut??=[],c=[],p,m,_=0,w=i.length-1,b=0,k=s.length-1;for(;_<=w&&b<=k;)if(i[_]===null)_++;else if(i[w]===null)w--;else if(d[_]===a[b])c[b]=Bn(i[_],s[b]),_++,b++;else if(d[w]===a[k])c[k]=Bn(i[w],s[k]),w--,k--;else if(d[_]===a[k])c[k]=Bn(i[_],s[k]),ei(t,c[k+1],i[_]),_++,k--;else if(d[w]===a[b])c[b]=Bn(i[w],s[b]),ei(t,i[_],i[w]),w--,b++;else if(p===void 0&&(p=Lh(a,b,k),m=Lh(d,_,w)),p.has(d[_]))if(p.has(d[w])){let z=m.get(a[b]),Pt=z!==void 0?i[z]:null;if(Pt===null){let Zn=ei(t,i[_]);Bn(Zn,s[b]),c[b]=Zn}else c[b]=Bn(Pt,s[b]),ei(t,i[_],Pt),i[z]=null;b++}else Lr(i[w]),w--;else Lr(i[_]),_++;for(;b<=k;){let z=ei(t,c[k+1]);Bn(z,s[b]),c[b++]=z}for(;_<=w;){let z=i[_++];z!==null&&Lr(z)}return this.ut=a,Cr(t,c),Mt}});async function lt(t){h({list_complaint:""});try{await t()}catch(e){h({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof v&&await pe().catch(()=>{})}}var zu=()=>{lt(Km)},Wh=()=>{lt(Qm)};function _e(t){return r`<h1 tabindex="-1">${t}</h1>
    ${l.list_complaint?r`<p class="alarm" role="alert">${l.list_complaint}</p>`:u}
    ${l.list_told&&Vi()?r`<p class="told" role="status">
            ${l.list_told} <button type="button" @click=${zu}>Undo</button>
          </p>`:u}
    ${(l.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Bh=new Map,Eh=Promise.resolve();function Ih(t,e=""){let n=`${t}
${e}`,o=Bh.get(n);return o||(o=Eh.then(()=>Wv(t)),Eh=o,Bh.set(n,o)),o}async function Wv(t){try{let e=await Ee({kind:"glb",gauge:{file:t}}),n=Qo(await e.arrayBuffer());return Qi(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof v)return;throw e}}var Ju=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{Ih(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void de(u,this);let{left:n,right:o,floor:i,brim:s,loops:a}=e,d=.04*Math.max(o-n,s-i),c=[n-d,-s-d,o-n+2*d,s-i+2*d];de(r`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Ki(a)} />
      </svg>`,this)}};customElements.define("mould-picture",Ju);var Le=(t,e)=>r`<ul class="cards">
    ${Zr(t,({file:n})=>n,e)}
  </ul>`;function nn(t){let{one:e,facts:n,picture:o,open:i}=t,s=l.list_open?.file===e.file?l.list_open:void 0,a=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{lt(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${a}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${e.shipped?"built-in":e.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${a}"
      @click=${()=>Bv(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?Ev(t,s):u}
  </li>`}function Bv({one:t},e){let{file:n,name:o,note:i}=t;h({list_open:e?{file:n,name:o,note:i,stem:Ko(n)}:void 0})}function Ev(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{lt(()=>jv(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(c=>o[c]===e[c])&&Ko(o.file)===e.stem,a=n.name==="fats"||n.name==="tips"||e.name.trim()!=="",d=()=>{lt(()=>qv(t,e))};return r`<div class="acts">
    ${Gr(o)} ${n.called?Vu(n.called==="for"?"For":"Name",e,"name"):u}
    ${n.name==="tips"?u:Vu("Note",e,"note")} ${Vu("Name of the file",e,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${s||!a||!e.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{lt(()=>jh(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?Iv(o,e):u}
  </div>`}function Vu(t,e,n){let o=`list-${n}`,i=s=>y(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${F(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function Iv(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{lt(()=>jh(t,e,!0))}}>Remove it even so</button>
  </div>`}async function jv(t,e){let n=await Gm(t,e),o=l.files?.[t.list].find(i=>i.file===n);o&&(h({list_open:{file:n,name:o.name,note:o.note,stem:Ko(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function qv({kind:t,one:e},{name:n,note:o,stem:i}){await Zm(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),h({list_open:void 0})}async function jh(t,e,n){let o=t.used_by??[];if(o.length&&!n)return y(e,{used_by:o});try{await Xm(t,n),h({list_open:void 0})}catch(i){let s=i instanceof v?i.answer.used_by:void 0;if(!s)throw i;y(e,{used_by:s})}}function Xr(t,e,n){let o=[...l.files?.[t.list]??[]].sort((s,a)=>Number(s.shipped)-Number(a.shipped));return o.length?Le(o,s=>nn({kind:t,one:s,facts:Hv(s),open:()=>n(s.file)})):r`<p class="aside">None yet. ${e}</p>`}var qh=4;function Hv({holds:t=[],changed:e}){let n=t.length-qh,o=n>0?[...t.slice(0,qh),`${n} more`]:t;return[o.length?Ce(o):"",e?`changed ${bt(e)}`:""].filter(Boolean)}var fs="";function ta({label:t,add:e,act:n,tried:o}){let i=()=>{o(async()=>{await n(fs.trim()),fs="",nt()})},s=a=>{fs=a.target.value,nt()};return r`<div class="row">
    <div class="field">
      <label for="new-held">${t}, by name</label>
      <input id="new-held" .value=${F(fs)} @input=${s} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!fs.trim()} @click=${i}>${e}</button>
  </div>`}function $e(t){let e=l.removed.filter(n=>n.kind===t);return e.length?r`<details class="removed">
    <summary>Removed, and kept still: ${e.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${e.map(Nv)}
    </ul>
  </details>`:u}function Nv(t){let e=t.name||t.file,n=`removed ${t.removed}`,o=l.open.has(n);return r`<li>
    <p>
      <b>${e}</b> <small>${t.file}, removed ${bt(t.removed_at)}, kept until ${bt(t.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${e}" @click=${()=>{lt(()=>tf(t))}}>
        Bring back
      </button>
      ${o?r`<button
                type="button"
                aria-label="Delete ${e} for good"
                @click=${()=>{lt(()=>ef(t))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>qt("open",n)}>Keep it</button>`:r`<button type="button" aria-label="Delete ${e} ..." @click=${()=>qt("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function Nh(){let t=Fn();return r`${_e("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${Xr(je,"Each file is named by the formulas that use its fats.",e=>Ji(je,e))}
      ${t?Ph(t):u}
      ${ta({label:"A new fat of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(Fh(e)):xr(je,Nu(e,l.fats)),tried:lt})}
    </section>
    ${Uv()} ${$e("fats")}`}var Hh="fats that are listed";function Uv(){let t=l.finding?.key===Hh?l.finding.text:"",e=l.fats.filter(n=>hn(n,t)!==void 0);return r`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${F(t)}
          @input=${n=>h({finding:{key:Hh,text:n.target.value}})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
    </div>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Built-in fats and their figures">
      <table class="figures fats">
        <thead>
          <tr>
            <th scope="col">Fat</th>
            <th scope="col">Saponification value, mg KOH/g</th>
            <th scope="col">INCI name</th>
          </tr>
        </thead>
        <tbody>
          ${e.map(n=>zv(n,t))}
        </tbody>
      </table>
    </div>
    ${e.length?u:r`<p class="hint">None is called so.</p>`}
  </section>`}function zv(t,e){let{low:n,high:o,typical:i}=t.saponification_value_mg_koh_per_g,s=hn(t,e),a=d=>S(d,1);return r`<tr>
    <th scope="row">${t.name}${s&&s!==t.name?r` <small>${s}</small>`:u}</th>
    <td>${a(i)} <small>${a(n)} to ${a(o)}</small></td>
    <td>${t.inci}</td>
  </tr>`}var Uh=t=>t.goes_into==="lye",zh=({role:t})=>t==="alkali",Jv=t=>zh(t)?"down":"nearest",vo=(t,e)=>mt(t,e,Jv(e));function ea(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>Uh(i)),n=({one:i})=>i.role==="water",o=({one:i})=>zh(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function Jh(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!Uh(e))}function Ku(t){let e=D(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${f({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${f({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${f({label:"Unmould after",of:t,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${f({label:"Cut within",of:t,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${Gv(t)}
    ${P({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>f({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Vv=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],Vh={after:"",mass:""},Kh=3,Kv={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:Kh},()=>Vh)}}};function Qv(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Gv(t){let e=Qv(t);return r`${T({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:Vv,puts:o=>({...pt(t,"",["drying","water_lost_in_cure"]),...Kv[o]})})}
  ${e==="share"?r`<div class="row">
          ${f({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${f({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${f({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?Yv(t):u}`}function Yv(t){let e={of:t,at:"/drying/weighings",least:Kh};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${x(e).map((n,o)=>r`<div class="row named" id=${W(e,o)}>
          ${f({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${f({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${H(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${Y(e,"One more weighing",()=>j(e,Vh,"weighing"))}`}var Zv=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],na=t=>Ln(t).map(e=>[e.id,e.name]),Qh=["unsaid","Not given"],Gh=["none","Holds none"],Yh=t=>t===void 0?"unsaid":t==="none"?"none":"some",Xv=t=>e=>e==="some"?t:e==="none"?"none":void 0;function Zh(t,e){return Qu(t,`${e}/contains_fat`,[Qh,Gh,["some","Holds fat"]],na(t))}function Qu(t,e,n,o){let i=Yh(g(t,e)),s=n.some(([a])=>a===i)?i:void 0;return r`${T({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:Xv({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${gt({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${f({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var tk=[Qh,Gh,["some","Holds acid"],["typed","By what it takes up"]],ek={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Gu(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":Yh(g(t,n));return r`${T({of:t,question:"Acid in it",at:n,chosen:o,answers:tk,puts:i=>ek[i]})}
  ${o==="some"?r`<div class="row">
          ${gt({label:"Which acid",of:t,at:`${n}/acid`,answers:Zv.map(i=>[i,i]),unsaid:"choose ..."})}
          ${f({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${f({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Yu(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Yu(t,e,n){let o=g(t,e)===!0?"yes":"no";return T({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var nk=["tsp/lb","tbsp/lb","tsp/kg"],oa=["%","g/kg",...nk].flatMap(t=>[`${t} of fats`,`${t} of batter`]),tg=[...oa,"% of finished soap","g/kg of finished soap"];function Xh(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function ia(t,e,n,o,i=!1){let s=N(t,e),[a,d]=Xh(D(t,e),o),c=l.typed?.key===s?l.typed.text:a;!i&&!(a.trim()&&d)&&oe(t,e,s,a.trim()?`${n}: of what`:n);let m=Bt(t,e),_=(b,k)=>{let z=`${b.trim()} ${k}`.trim();V(t,e,i&&!b.trim()?void 0:z),nt()},w=b=>{let k=b.target.value,[z,Pt]=Xh(k,o);h({typed:{key:s,text:k}}),_(z,Pt||d)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${F(c)}
        @input=${w}
        @blur=${rs}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${b=>_(c,b.target.value)}
      >
        <option value="" .selected=${F(d==="")}>of what?</option>
        ${o.map(b=>r`<option value=${b} .selected=${F(b===d)}>${b}</option>`)}
      </select>
    </div>
    ${ft(s,m)}
  </div>`}function ok(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var ik=.01+1e-9;function li(t,e){let{sum:n,unread:o}=ok(e),i=a=>`${String(Math.round(a*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=ik?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var eg=(t,e)=>Ln(t).find(n=>n.id===e)?.name??e,hs=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),sa=t=>x(hs(t));function td(t){let e=sa(t),n=l.picking?.of===t&&l.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>sk(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?li("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:oe(t,"/fats",N(t,"/fats"),"The fats")}
    ${n?og(t):Y(hs(t),"Add a fat",()=>ng(t,e.length))} ${mk(t)}
  </section>`}function sk(t,e,n){let o=`/fats/${e}`,i=eg(t,String(n[e].fat??""))||"Which fat?",s=yt(t,`${o}/fat`)??yt(t,o),a=l.picking?.of===t&&l.picking.row===e;return r`<li class="formula-row" id=${W(hs(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${N(t,`${o}/fat`)}
        aria-expanded=${a?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>a?Zu():ng(t,e)}
      >
        ${i}
      </button>
      ${f({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${H(hs(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${a?og(t):u}
    ${Rh(t,String(n[e].fat??""))}
    ${P({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${lk(n[e])}`,body:()=>ck(t,e)})}
  </li>`}function ng(t,e){h({picking:{of:t,row:e,text:""}}),G(U("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Zu(){let t=l.picking;h({picking:void 0}),t&&G(Z(t.of,t.row<sa(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function Xu(t,e){let{row:n}=l.picking,o=sa(t);h({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};as(hs(t),`${eg(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],Z(t,`/fats/${n}/share`))}function og(t){let{row:e,text:n}=l.picking,o=sa(t).map(m=>m.fat),i=rk(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),a=s.find(m=>m.id===l.picking.lit),d=m=>{h({picking:{of:t,row:e,text:m.target.value}})},c=m=>{let _=a?s.indexOf(a)+m:m>0?0:s.length-1,w=s[(_+s.length)%s.length];w&&(h({picking:{of:t,row:e,text:n,lit:w.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${w.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Zu(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=s.find(b=>Ht(b.name)===Ht(n.trim())),w=a??(s.length===1?s[0]:_);m.key==="Enter"&&w&&Xu(t,w.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${a?`fat-${a.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Zu}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,w=hn(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===a?"lit":""}
          ?disabled=${_}
          aria-selected=${m===a||o[e]===m.id?"true":"false"}
          @click=${()=>Xu(t,m.id)}
        >
          ${m.name}${w===m.name||!w?"":`, ${w}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{ak(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function rk(t,e){let n=Ln(t).filter(a=>hn(a,e)!==void 0),o=e.split(/\s+/).filter(a=>a.length>2);if(n.length||o.length<2)return n;let i=a=>o.filter(d=>hn(a,d)!==void 0).length,s=Math.max(...Ln(t).map(i));return s?Ln(t).filter(a=>i(a)===s):[]}async function ak(t,e){if(!await kr(t))return;let o=e.trim(),i=Wr(o,[...l.fats,...X("own_fats","/fats")]),s=X("own_fats","/fats").length;V("own_fats",`/fats/${s}`,{...Vr,id:i,name:o}),Xu(t,i),Et("own_fats",i),G(Z("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function lk(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var uk=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],dk={published:void 0,one:"",range:{low:"",typical:"",high:""}};function ck(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(t,`/fats/${e}/confirmed`)!==void 0,a=(d,c)=>f({label:d,of:t,at:c,number:!0,short:!0});return r` ${f({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${T({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:uk,puts:d=>dk[d],hint:pk(t,D(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${a("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${a("Lowest",`${n}/low`)} ${a("Typical",`${n}/typical`)} ${a("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Yu(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function pk(t,e){let n=Ln(t).find(a=>a.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function mk(t){let e=Yi(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=D(t,"/own_fats");return P({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>f({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var fk=t=>ct.includes(t);function ra(){let t=l.complaint;return!t?.field||t.lye_heavy?!1:ni().some(({of:e,at:n})=>he(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function gs(){let t=l.complaint?ni():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>hk(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function hk({of:t,id:e,folds:n}){for(let o of n)rt(o);h({has_asked:!0}),fk(t)?(l.view!=="formula"||l.formula_of!==t)&&Qt(t):l.view!=="set-up"&&!(t==="own_fats"&&l.view==="formula")&&h({view:"set-up"}),requestAnimationFrame(()=>G(U(e)))}var ig="danger-of-superfat";function ed(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${f({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:Wn(t).length?ig:void 0})}
    </div>
    ${os(t,ig)} ${gk(t)} ${vk(t,e)}
  </section>`}function gk(t){let e=X(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${T({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>_k(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>$k(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${li("The two",e.map(i=>i.share))}
        </p>`:u}`}function _k(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function $k(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),a=yt(t,i)??yt(t,`${i}/alkali`);return r`<div class="formula-row">
    ${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?f({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${f({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${P({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${wk(e.purity_range)}`,body:()=>bk(t,i)})}
  </div>`}var wk=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function bk(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return r`${T({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${f({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${f({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var yk={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function vk(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(yk);return r`${T({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:xk(e)})}
    <div class="row">${n.map(s=>kk(t,s))}</div>`}function kk(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?f({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?f({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):f({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function xk(t){if(!(!t||l.is_old))return`It now makes a strength of ${S(t.lye_strength_percent,1)} %; ${S(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${S(t.water_percent_of_fats,1)} % of the fats.`}function qn(t,e,n){let o=Tk(t,e);return P({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${Sk(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${sg(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>Dk(t,i,s))}
        ${f({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function Tk(t,e){let n=X(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var nd={name:"",share:""},Rk={unsaid:void 0,one:"",many:[nd]};function Sk(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=a=>a==="many"&&o?[{...nd,name:o}]:Rk[a];return r`${T({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?f({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${sg(t,e,"INCI name","One more INCI name")}`:u}`}function Dk(t,e,n){return T({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function sg(t,e,n,o,i){let s={of:t,at:e};return r`${x(s).map((a,d)=>r`<div class="row named" id=${W(s,d)}>
        ${f({label:`${n} ${d+1}`,of:t,at:`${e}/${d}/name`})}
        ${f({label:`Share ${d+1}`,of:t,at:`${e}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${d}`,d)??u} ${H(s,d,String(a.name||`${n} ${d+1}`))}
      </div>`)}
  ${Y(s,o,()=>j(s,nd,n))}`}var Ak=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:jk},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:Ck},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:Lk},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:Wk}];function od(t){return Ak.map(e=>{let n={of:t,at:`/${e.list}`},o=x(n),i=(s,a)=>r`<li class="formula-row" id=${W(n,a)}>
        ${Ok(t,e,n,s,a)} ${e.row(t,`${n.at}/${a}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${Y(n,e.add,()=>j(n,Pk(e),e.add.replace("Add ","")))}
    </section>`})}function Pk(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function Ok(t,e,n,o,i){let s=`/${e.list}/${i}`,a=yt(t,s),d=String(o.name||`number ${i+1} of the ${e.list}`);return r`${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row named">
      ${f({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:ia(t,`${s}/rate`,"How much",oa)}
      ${H(n,i,d)}
    </div>`}function rg(t,e,n,o){let i=`${e}/goes_into`,s=g(t,i);return T({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function ag(t,e,n){let o=g(t,`${e}/stirred_in`);return r`${rg(t,e,Fk,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?T({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:Mk,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var Mk=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],Fk=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function id(t,e,n){let o=(a,d,c)=>a?`${d}${String(a)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(a=>`${e}/${a}`);return P({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${f({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${f({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${ia(t,`${e}/limit`,"The most that the supplier's document allows",tg,!0)}`})}function sd(t,e,n,o){let i=(a,d)=>a===void 0?"":a==="none"?`no ${d}`:d,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return P({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${Zh(t,e)} ${o?Gu(t,e):u}`})}var aa=(t,e,n)=>qn(t,e,String(n.name||"it"));function Ck(t,e,n){return r`${ag(t,e,!0)}
    <div class="folds">${sd(t,e,n,!0)} ${id(t,e,n)} ${aa(t,e,n)}</div>`}function lg(t,e,n){return P({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>ag(t,e,!1)})}function Lk(t,e,n){return r`<div class="folds">
    ${id(t,e,n)} ${aa(t,e,n)} ${lg(t,e,n)} ${sd(t,e,n,!1)}
  </div>`}function Wk(t,e,n){return r`${Ek(t,e)}
    <div class="folds">
      ${id(t,e,n)} ${aa(t,e,n)} ${lg(t,e,n)} ${sd(t,e,n,!0)}
    </div>`}var Bk=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function Ek(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return r`${T({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:a=>a==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${gt({label:"Which oil",of:t,at:`${n}/fat`,answers:na(t),unsaid:"choose ..."})}
            ${f({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${T({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:Bk,puts:a=>a,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var Ik=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function jk(t,e,n){let o=(i,s,a)=>P({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:a});return r`${Hk(t,e,n)}
    ${rg(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${Uk(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>qk(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Gu(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>f({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${aa(t,e,n)}
    </div>`}function qk(t,e){let n=g(t,e)===!0?"ice":"liquid";return T({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function Hk(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...pt(t,e,["replaces","rate"]),[s]:""});return r`${T({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:Nk,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${f({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?ia(t,`${e}/rate`,"Rate",oa):u}`}var Nk=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function Uk(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(d,c)=>f({label:d,of:t,at:`${n}/${c}`,unit:"%",short:!0});return r`${T({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${Qu(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...na(t)])}
          <div class="row">
            ${f({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${gt({label:"Built-in figures of",of:t,at:n,answers:Ik.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var _s=()=>Object.keys(g("studio","/cups")??{}),$s=()=>_s().length===1?{net:""}:_s().length?{cup:"",net:""}:{holds:"",net:""},ug="\0another";function ws(t,e="Cup holds"){let n=`${t}/holds`,o=_s();if(g("run",n)!==void 0||!o.length)return r`${f({label:e,at:n,unit:"ml",short:!0})}${o.length?zk(t):u}`;let i=a=>a===ug?B("run","Another cup",t,{...rd(t),holds:""},Z("run",n)):B("run",`Cup: ${a}`,t,{...rd(t),cup:a}),s=a=>D("studio",`/cups/${L(a)}`);return gt({label:"Which cup",at:`${t}/cup`,answers:[...o.map(a=>[a,`${a}, ${s(a)}`]),[ug,"Another cup"]],unsaid:"choose ...",chosen:D("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function rd(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var zk=t=>r`<button type="button" @click=${()=>B("run","A cup of the studio",t,rd(t))}>
    A cup of my studio
  </button>`;function cg(){return it()?r`<div class="row">
    ${_s().map(t=>f({of:"studio",label:`${t} holds`,at:`/cups/${L(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${Jk()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function Jk(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||dg();e.value="",B("studio",`${n} added`,`/cups/${L(n)}`,"",Z("studio",`/cups/${L(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${dg()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function dg(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!_s().includes(e))return e}}var Vk=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),ad=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function la(t){let{run:e}=ad(t);return P({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${it()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${jn("How warm",[ad(t)])} ${C("run",e)} ${Kk(t)}`})}function Kk(t){let{run:e,studio:n}=ad(t),o=d=>({run:`${e}/${d}`,studio:`${n}/${d}`}),i=l.units==="us"?"\xB0F":"\xB0C",s=(d,c,p=i)=>At(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),a=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${gt({label:"The lye cools in",...us(a),answers:Vk,unsaid:"not given",optional:!0})}
  </div>`}var se=()=>$(l.run.now,"/pipe")!==void 0;function pg(){let t=e=>{let n=A(e,"/pipe",{formula:"",fills_headspace:"",whip:$s()});return it()?n:A(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};rt("set-up pipe"),ie("run","Topping added",t,U("lane-pipe"))}function Qk(t){let e=Object.keys($(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:A(o,i,void 0),t)}function Gk(){ie("run","Topping removed",Qk,U("topping-back"))}function mg(){let t=l.past.at(-1)?.run?.now;return!t||$(t,"/pipe")===void 0||se()?u:r`<button type="button" id="topping-back" @click=${zi}>Bring the topping back</button>`}function ld(){return r`${ox()} ${la("pipe")}
    <p class="choice"><button type="button" @click=${Gk}>Take the topping away</button></p>`}var Yk=["trials","beads","envelope"];function ud(t){return Yk.every(e=>g("run",`/pipe/${e}`)===void 0)&&oe("run","/pipe",`${N("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${C("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Ut({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:$s()},body:Zk})}
      ${Ut({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:Xk})}
    </div>
    ${Ut({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:kh,body:()=>xh(t)})}
    ${t?ex(t):u}`}function Zk(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${x(t).map((e,n)=>r`<div class="row" id=${W(t,n)}>
            ${f({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${H(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${Y(t,"One more trial",()=>j(t,"","trial"))}
    <div class="row">
      ${f({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${ws("/pipe/trials/weigh_cup")}
    </div>
    ${C("run","/pipe/trials/weigh_cup")}`}function Xk(){let t="/pipe/envelope",e=g("run",`${t}/form`);return r`${T({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${f({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${f({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${f({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var tx={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function ex(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},a)=>M({key:`pipe.by.${i}`,label:tx[i],note:o(a),shown:St(l.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${nx(t)}`}function nx(t){let e=t.visible_by?.suggested_correction;if(!e||l.is_old)return u;let n=S(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&$(l.run.now,`${o}/correction`)!==e.correction,a=()=>B("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${a}>Keep ${n} for my tip</button>`:u}`}function dd(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${f({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${ws("/pipe/whip")}
    </div>
    ${C("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function ox(){let t="/pipe/pace",e=(n,o,i,s=!1)=>f({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return P({name:"pace",pointers:[t],summary:"Piping speed",body:()=>Ut({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function ix(t,{at:e,figure:n}){let o=$(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function bs(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,ix(t,e))}>It is really so: keep it</button>`:u}var pd=500,sx=()=>$(l.run.now,"/cut")===void 0&&rx()>=pd,rx=()=>l.plan?.pour.brimful_ml??l.measured?.gauge.pockets[0]?.brimful_ml??0,ua={run:"/cut/kerf",studio:"/kerf"};function fg(t){rt("set-up cut"),B("run","Cut","/cut",{bar:cd[t],...it()?{}:{kerf:""}},Z("run",`/cut/bar/${Object.keys(cd[t])[0]}`))}function ax(){B("run","Left whole","/cut",void 0,U("cut-into-bars"))}function hg(){return sx()?r`<button type="button" id="cut-into-bars" @click=${()=>fg("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>fg("slab")}>Cut it into bars</button>`:u}var cd={loaf:{thickness:""},slab:{length:"",width:""}};function lx(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var ux={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function gg(){let t=lx(),e=(o,i)=>f({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=D("run","/cut/along");return r` ${T({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>cd[o]})}
    <div class="row">
      ${t==="loaf"?f({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>f({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${At(ua,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${jn("Kerf",[ua])}</p>
    ${t?T({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:ux[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${ax}>Leave it whole</button>`}var da=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function ca(t,e,n){return r`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${F(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}function dx({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],a=-t.brim-2*n+i,d=a-s-n,c=[t.left-n,d,t.right-t.left+2*n,-t.floor+n-d],p=(m,_)=>R`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Ki(e,a))}${p("side",Ki(t.loops))}
    </svg>
  </div>`}function ui(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${dx(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${O(St(l.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${O(St(l.units,i.total_ml))} together`:u},
      ${O(Tt(l.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(a=>`By ${a.by} ${O(St(l.units,a.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(a=>r`<li>${a.text}</li>`)}
          </ul>`:u}`}var cx={mm:"in",g:"oz","\xB0C":"\xB0F"},px={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function pa(t,e,n=""){let o=md(t);if(o)return o.unit??"";let i=Ke($(I(),t));return px[e]?.test(i)?i:n||(l.units==="us"?cx[e]??e:e)}var ma=()=>h({typed:void 0}),di=t=>`d${t.replaceAll("/","-")}`,md=t=>l.typed?.key===di(t)?l.typed:void 0,fa=t=>md(t)?.text??String($(I(),t)??"");function Hn(t){let{complaint:e}=et();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function fd(t,e,n,o){let{pointer:i}=t,s=a=>{let d=a.target.value,c=t.unit?pa(i,t.unit,t.unit_before):"";h({typed:{key:di(i),text:d,unit:c}}),kt(i,mx(t,d,c))};return r`<input
    id=${di(i)}
    .value=${F(fa(i))}
    @input=${s}
    @blur=${ma}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${Hn(i)?"true":"false"}
  />`}function mx(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Qe(e)?`${e.trim()} ${n}`:e}function re(t,e){let n=di(t.pointer),o=Hn(t.pointer),i=fx(t.pointer)??t.hint,s=t.unit?` (${pa(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${fd(t,o||i?`${n}-said`:void 0,e)}
    ${ft(n,o,i)}
  </div>`}function fx(t){let e=$(I(),t),n=md(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function ha(t){let e=t.toLowerCase(),{file:n,shipped:o}=et().open,i=o?"":n;return l.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function ys(t){let{open:e}=et();try{if(await He(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));h({files:await Js()})}catch(n){if(!(n instanceof v))throw n;return bu(n)}l.run.file&&(Se(),ut()),t(e.file)}var wn="/shape/points",_g=500,Nn=(t,e)=>[wn,t,...e?[e]:[]].join("/"),$g=t=>Array.from({length:t.least},()=>({}));function wg(t){let e=Xt(I(),wn),n=gx(),{complaint:o}=et(),i=o?.field===wn&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${pa(Nn(-1,s.name),s.unit,bg(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,a)=>hx(t,a,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=_g} @click=${()=>_a(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function hx(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=_x(e),s=a=>{let{name:d,label:c,unit:p}=t.columns[a],m={label:c,pointer:Nn(e,d),unit:p,unit_before:bg(t,e,d)},_=`${c}, ${n.has(e)?o:`point ${e+1}`}`;return fd(m,i?`point-${e}-said`:void 0,$x(t,e,a),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>_a(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>yg(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function gx(){let t=[...Wi(I()),...sr(I())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function _x(t){let{complaint:e}=et();return Hn(Nn(t))??(e?.about===Nn(t)?e.line:void 0)}function bg(t,e,n){let o=(i,s)=>Ke($(I(),Nn(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function ga(t,e){queueMicrotask(()=>document.getElementById(di(Nn(t,e)))?.focus())}function _a(t,e){let n=[...Xt(I(),wn)];n.length>=_g||(n.splice(e,0,{}),ma(),kt(wn,n),ga(e,t.columns[0].name))}function yg(t,e,n=0){let o=Xt(I(),wn).filter((i,s)=>s!==e);ma(),kt(wn,o.length?o:[{}]),ga(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function $x(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let a=!fa(Nn(e,o))&&!fa(Nn(e,i));if(s.key==="Enter"&&s.shiftKey)_a(t,e+1);else if(s.key==="Enter"&&n===0)ga(e,i);else if(s.key==="Enter"&&e+1<Xt(I(),wn).length)ga(e+1,o);else if(s.key==="Enter")_a(t,e+1);else if(s.key==="Backspace"&&a&&Xt(I(),wn).length>1)yg(t,e,e>0?1:0);else return;s.preventDefault()}}var hd={weighings:[""]},gd=/\.(3mf|gltf|glb)$/i;function $a(t){let e=Rn(t);return e?{kind:t,points:$g(e)}:{kind:t}}var wx=()=>kt("/water",hd),on=t=>ye(I(),t),vs=()=>Li(I());function vg(t){let{open:e,answer:n,is_old:o}=et();return r`${Xe(e,()=>{ys(t)})} ${tn(e)}
    ${e.shipped?u:ai(l.files?.moulds.find(i=>i.file===e.file))}
    ${on("shape")&&on("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${on("shape")?at("Shape",vs(),Object.entries(Hp),bx):u}
    <div class="beside ${Rn(vs())?"rows":""}">
      <div>
        ${_d()} ${on("shape")?vx():u} ${on("mesh")?kx():u}
        ${$d()} ${on("water")?Tx():u} ${Sx()}
      </div>
      <div class="stays">${ui(n,o,xg())} ${Dx(t)}</div>
    </div>`}function bx(t){let e={...et().shapes,[vs()]:I().shape};y(et(),{shapes:e,answer:void 0}),kt("/shape",e[t]??$a(t))}function yx(){let{shipped:t,file:e}=et().open;return t?l.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function _d(){let t=yx();return re({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function vx(){let t=vs(),e=Rn(t);return r`${Mo(t).length?r`<div class="row">
          ${Mo(t).map(n=>re({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?wg(e):u}`}function $d(t=kl(I())){return r`<div class="row">
      ${t?u:re({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${re({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${re({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${re({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var wd=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],bd=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function kx(){let t=o=>String($(I(),`/mesh/${o}`)??""),e=(o,i,s)=>{let a=Hn(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${at(o,t(i),s,d=>kt(`/mesh/${i}`,d||void 0))}
      ${a?r`<p class="complaint">${a}</p>`:u}`},n=Hn("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${gd.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",wd)} ${e("Which way is up","up",bd)}
    ${t("role")==="body"?xx():u}
    <div class="row">
      ${re({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${re({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function xx(){let t=$(I(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${at("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>kt("/mesh/on_board",e==="yes"?!0:void 0))}`}function Tx(){let t=$(I(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":$(t,"/depth")!==void 0?"depth":"below_brim",n=s=>kt("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=$(I(),"/water/weighed_in"),i=e===void 0||e==="brim"?Hn("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${re({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${at("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?re({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?re({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${at("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>kt("/water/weighed_in",s))}
    <div class="row">
      ${Xt(I(),"/water/weighings").map((s,a)=>re({label:`Water, round ${a+1}`,pointer:`/water/weighings/${a}`,unit:"g"},Rx(a)))}
    </div>
    ${et().complaint?.field==="/water/weighings"?r`<p class="complaint">${et().complaint.line}</p>`:u}
    <button type="button" @click=${kg}>One more round</button>`}function kg(){let t=Xt(I(),"/water/weighings").length;kt(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var Rx=t=>e=>{e.key==="Enter"&&(t+1===Xt(I(),"/water/weighings").length?kg():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function Sx(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${on("shape")?u:t("Add measures, as a check",()=>kt("/shape",$a("block")))}
    ${on("shape")&&on("mesh")?t("Leave the measures out",()=>kt("/shape",void 0)):u}
    ${on("water")?t("Leave the water out",()=>kt("/water",void 0)):t("Add weighed water",wx)}
  </div>`}function xg(){let t=sr(I()).length;return t?[...Bi(I()),t===1?"the other number of a point":`the other numbers of ${t} points`]:Bi(I())}function Dx(t){let e=String(I().name??"").trim(),n=ha(e),{open:o,answer:i,is_old:s,complaint:a}=et(),d=i&&!s&&!a&&!xg().length&&e&&!n,c=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{ys(t)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?r`<p class="aside">It stays in ${c}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${yd(e,n)}
    ${a?r`<p class="alarm" role="status">${Ax(a.field)}${a.line}</p>
            ${bs(I(),a.keep,kt)}`:u}`}var yd=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function Ax(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=Mo(vs()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var Px=200*2**20;async function Tg(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(h({mesh:e}),kt("/name",t.name.replace(/\.\w+$/,"")),t.size>Px){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return y(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await rp(t,o=>y(e,{share:o}));y(e,{share:1,upload:n.file}),await Sg(e)}catch(n){y(e,{complaint:n instanceof v?n.message:String(n)})}}async function Sg(t){let e=t.questions+1;y(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let a=await Go({file:n,unit:o,role:i,up:s});e===t.questions&&y(t,{answer:a,is_measuring:!1})}catch(a){if(!(a instanceof v))throw a;if(e!==t.questions)return;let d=o?t.sizes:Cx(a.complaint),c=d.length&&!o?void 0:Q(a.complaint);y(t,{sizes:d,complaint:c,is_measuring:!1})}}async function Ox(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await ep({file:n,unit:o,up:i});e===t.questions&&y(t,{inspection:s})}catch(s){if(!(s instanceof v))throw s;e===t.questions&&y(t,{complaint:Q(s.complaint)})}}function Mx(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(Fx)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{Ox(t)}}>List every defect of the mesh</button>`}var Fx=({text:t})=>r`<li>${t}</li>`;function Cx({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>S(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function vd(t,e){y(t,e),Sg(t)}function Dg(t,e){let n=a=>{let d=a.target;Tg(d.files?.[0]),d.value=""},o=a=>{a.preventDefault(),Tg(a.dataTransfer?.files[0])},[i,s]=l.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${a=>a.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${l.mesh?Lx(l.mesh,t,e):u}`}function Lx(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,a])=>[s,a?`${s}: ${a} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!gd.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${at("Unit of the file's numbers",t.unit,i,s=>vd(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?Mx(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${at("Role",t.role??t.answer?.gauge.role,wd,s=>vd(t,{role:s}))}
            <h4>Which way is up</h4>
            ${at("Up",t.up??"",bd,s=>vd(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${ui(t.answer)} ${Wx(t,e,n)}`:u}`}var Ag=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function Wx(t,e,n){let o=String(I().name??"").trim(),i=ha(o),s=o&&!i&&!t.is_keeping;return r`${_d()} ${$d(Ag(t))} ${yd(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>Rg(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>Rg(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Rg(t,e,n){y(t,{is_keeping:!0});try{let o=Bx(t,await ap(t.upload,Ix(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await Ex(o))return e(o);Zo(o,"mesh",et().title),await ys(n),y(t,{complaint:l.mould?.complaint?.line})}catch(o){y(t,{complaint:o instanceof v?o.message:String(o)})}y(t,{is_keeping:!1})}function Bx(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=I();return{...i,...Ag(t)||o===void 0?{}:{cavities:o},mesh:n}}async function Ex(t){try{return await xn({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof v&&e.status===422)return!1;throw e}}var Ix=t=>Fo(t.replaceAll(/[^\w.-]+/g,"_"),l.files?.meshes??[]);var wa={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Pg={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Og(t){Je();let e={...Pg,shape:$a("block")};t==="mesh"?Zo(Pg,"mesh",wa[t]):Zo(t==="water"?{...e,water:hd}:e,"form",wa[t]),ya()}async function Mg(t,e){Je(),await Cf(t,e),ya()}async function ba(t){Je(),await Lf(t),ya()}function jx(t){Zo(t,"form","More about this mould"),ya()}function ya(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Fg(t){if(!l.mould)return;let{way:e,title:n}=l.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?Dg(t,jx):vg(t)}
  </section>`}var kd=()=>h({chosen_mould:void 0});function ks(t,e){let n=l.files?.moulds.find(s=>s.file===t),o=l.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:e};h({chosen_mould:i}),qx(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function qx(t){try{y(t,{answer:await Go({file:t.file})})}catch(e){y(t,{complaint:e instanceof v?e.message:String(e)})}}var Hx=t=>l.files?.moulds.find(e=>e.file===t);function Cg(t,e){let n=()=>e(async()=>{await Mg(t.file,t.shipped),kd()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${Gr(Hx(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?ui(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:zx(t,e)}
    </div>
  </section>`}var Lg=({answer:t})=>(t?.gauge.pockets[0]?.brimful_ml??0)>=pd;function Nx(t){let e=Lg(t)?t.slice.trim():"";return Qe(e)?`${e} mm`:e||void 0}var Ux=t=>r`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${F(t.slice)}
      @input=${e=>y(t,{slice:e.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function zx(t,e){let n=da(t.sell),o=Nx(t),i=s=>()=>e(()=>Pr({mould:t.file,name:t.name,formula:s,sell:n,slice:o}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${ca("mould-sell",t.sell,s=>y(t,{sell:s}))}
      ${Lg(t)?Ux(t):u}
    </div>
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(l.files?.formulas??[]).map(s=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${i(s.file)}>
              <b>${s.name}</b><span>${s.note||s.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function xs(){let{view:t,run:e,order:n,formula_of:o,formulas:i,mould:s,chosen_mould:a}=l;if(t!=="reading")return an(t)?{name:t,file:e.file,of:e}:t==="moulds"&&s?{name:"describing",file:s.open.id,of:s}:t==="moulds"&&a?{name:"chosen",file:a.file,of:a}:t==="order"?{name:t,file:n?.open.file,of:n}:t!=="formula"?{name:t}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:Ai[o],file:e.file,of:e}}async function Bg({name:t,file:e}){if(!(!(t===Ai.apart&&l.formulas.apart?.file===e)&&!await Or()))try{await Jx(t,e)}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o;h({view:"runs",list_complaint:o.message})}}async function Jx(t,e=""){let n=t;if(an(n))return Wg(e,n);let o=["pour","pipe"].find(i=>Ai[i]===t);if(o){await Wg(e,"formula"),l.view==="formula"&&Qt(o);return}if(t===Ai.apart)return es(e);if(t==="order")return ns(e);await Vx(t,e)}async function Wg(t,e){t===l.run.file||!t?h({view:l.run.file?e:"runs",typed:void 0}):await ze(t,e)}async function Vx(t,e){let n=t;kd(),Je(),h({view:ue(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=mr(Vt).find(i=>i.id===e);t==="describing"&&o&&await ba(o),t==="chosen"&&ks(e),Kx()}async function Kx(){try{await pe(),Sr()}catch(t){if(!(t instanceof v))throw t;h({list_complaint:t.message})}}var ae={id:""},jt,xd=!1,Rd=new Map,va=JSON.parse(sessionStorage.getItem("left")??"{}");function Ig(){let t=xs();xd||!t||jt&&Ie(jt)===Ie(t)||(ka(),jg(t))}function jg(t){let e=!jt||jt.name===t.name&&jt.of!==void 0&&jt.of===t.of;if(jt=t,e)return ci();ae={id:crypto.randomUUID(),before:location.hash},Rd.set(ae.id,t.of),history.pushState(ae,"",Ie(t)),requestAnimationFrame(Gx)}function ci(){jt&&(ae.id||(ae={id:crypto.randomUUID()}),Rd.set(ae.id,jt.of),history.replaceState(ae,"",Ie(jt)))}var Qx="button, input, select, summary, a[href], [tabindex]",Td=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),qg=t=>[...document.querySelectorAll(`#main :is(${Qx})`)].filter(e=>Td(e)===t);function ka(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?va[ae.id]={scroll:scrollY}:va[ae.id]={scroll:scrollY,words:Td(t),nth:qg(Td(t)).indexOf(t)}}function Gx(){scrollTo(0,0),document.activeElement?.closest("#main")||Hg()}function Hg(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function Ng(){let{scroll:t,words:e,nth:n=0}=va[ae.id]??{scroll:0},o=e===void 0?void 0:qg(e)[n];o?o.focus({preventScroll:!0}):Hg(),scrollTo(0,t)}var bn=t=>Ug({name:t,file:an(t)?l.run.file:void 0});async function Ug(t){ka(),await Sd(t,()=>{let e=xs();e&&!(jt&&Ie(jt)===Ie(e))&&jg(e)})}async function Sd(t,e){xd=!0;try{await Bg(t)}finally{xd=!1,e()}}function zg(t){ae.before===Ie(t)?history.back():Ug(t)}var Eg=Promise.resolve();function Yx(t,e){ka();let n=()=>history.state?.id!==t?.id;Eg=Eg.then(async()=>{if(!e)return ci();if(n())return;let o=t?Rd.get(t.id):void 0,i=[l.run,l.formulas.apart,l.order].find(s=>s&&s===o);await Sd(i?{...e,file:"open"in i?i.open.file:i.file}:e,()=>{jt=xs(),!n()&&(ae=t??{id:crypto.randomUUID()},ci(),requestAnimationFrame(Ng))})})}function Jg(){history.scrollRestoration="manual",addEventListener("popstate",t=>{qc()||Yx(t.state,ul(location.hash))}),addEventListener("pagehide",()=>{ka(),sessionStorage.setItem("left",JSON.stringify(va))})}async function Vg(){let t=ul(location.hash);t&&(ae=history.state??{id:""}),await Sf(dp(t)),t&&Zx(t)&&await Sd(t,()=>{jt=xs(),ci(),requestAnimationFrame(Ng)}),await Df()}var Zx=t=>!jt||Ie(jt)===Ie(t);function pi(t=l.plan?"The figures below are out of date.":"No figures yet."){let e=ra()?void 0:l.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${yn(e.field)}${Q(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${Ad}>Ask again</button>`:u}
              ${he("run")?bs(l.run.now,e.keep,(n,o)=>V("run",n,o)):Dd(e)}
              ${Xx()?r`<button type="button" @click=${Pd}>Go to the field</button>`:u}`:u}
    </div>
    ${gs()}`}function Dd({keep:t}){let{studio:e}=l.beside;return e&&he("studio")?bs(e.now,t,(n,o)=>V("studio",n,o)):u}function yn(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function Ad(){ut(),l.run.failed&&Ne()}function Xx(){if(Kg())return!0;let t=Ge();return t?document.activeElement!==t:tT()}var tT=()=>l.view!=="set-up"&&he("run")&&l.complaint!==void 0&&l.complaint.field!=="",Kg=()=>["pour","pipe"].find(t=>l.complaint?.file&&l.complaint.field&&he(t));function Pd(){let t=Ge(),e=Kg();if(t)return Nt(t);e?Qt(e):bn("set-up"),eT(()=>Nt(Ge()))}function eT(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var Qg=()=>[...cr().map(t=>Xe(t)),...dr().map(tn)];function Gg(){let t=l.formula_of,e=l.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Qg()}${pi()}
      <p>Reading the formula ...</p>
      ${Md(t)}`;let n=l.plan&&ri(l.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${Qg()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${nT(t)}</p>
    <div class="choice">${Md(t)}${t==="apart"?oT():u}</div>
    ${ai(l.files?.formulas.find(i=>i.file===e.file))} ${iT(t,o,n)} ${Zg(t)}
    ${td(t)} ${ed(t,o)} ${od(t)} ${Ku(t)}
    <div class="choice">${Md(t)}</div>`}var Yg=t=>[Zg(t),td(t),ed(t,void 0),od(t),Ku(t)],Od=()=>String(l.run.now.name??l.run.file);function nT(t){let e=l.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=l.formulas.pour===e&&l.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${Od()}".${n}`:o?`Base and topping of "${Od()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${Od()}".${n}`}function Md(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>zg(e?{name:"formulas"}:{name:l.came_from,file:l.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function oT(){return r`<button type="button" @click=${()=>{fu("pour")}}>Use it as the base</button> ${se()?r`<button type="button" @click=${()=>{fu("pipe")}}>Use it as the topping</button>`:u}`}function iT(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...sT(t,n),...rT(t,e)].map(([o,i,s])=>r`<div class=${l.is_old?"old":""}>
                  <dt>${o} ${s?In(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${aT(t)}
  </section>`}function sT(t,e){let n=t==="pipe"?Hu(e,e.whippings[0]):"";return n?[["For one whipping",n]]:It(e.whole)?[["For one batch",en(e.whole,e.batch)]]:[]}function rT(t,e){let n=Wn(t).length?" \u26A0":"";return[["Fats",O(E(l.units,e.fats_g))],["Superfat as weighed",`${me(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...ea(e).map(({one:o})=>[o.name,O(vo(l.units,o))])]}function aT(t){let e=ra()?void 0:l.complaint;if(!e)return r`<div role="status"></div>
      ${gs()}`;let n=he(t),o=n&&e.field!==""&&document.activeElement!==Ge();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${l.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${yn(e.field)}${Q(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${Ad}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>Ge()?.focus()}>Go to the field</button>`:u}
    </div>
    ${gs()}`}function Zg(t){return r`<section class="card" aria-label="Name">
    ${f({label:"Name",of:t,at:"/name",wide:!0})}
    ${P({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>f({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Fd=t=>y(l.new_formula,t);function Xg(){let{name:t,copied:e}=l.new_formula,n=[...l.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>lt(async()=>{await i(t.trim()),Fd({name:"",copied:""})});return r`${_e("Formulas")}
    <section aria-label="Formulas">
      ${Le(n,lT)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${F(t)}
            @input=${i=>Fd({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(Pf)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Fd({copied:i.target.value})}
          >
            <option value="" .selected=${F(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${F(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>Of(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${$e("formula")}`}function lT(t){let e=t.changed?[`changed ${bt(t.changed)}`]:[];return nn({kind:Co,one:t,facts:e,open:()=>es(t.file)})}function uT(t){Je(),ks(t,`Saved in ${t}.`)}function t_(){let{chosen_mould:t}=l;return r`${_e("Moulds")}
  ${t?Cg(t,lt):Fg(uT)??r`${mT()} ${dT()}`}`}function dT(){let t=(l.files?.moulds??[]).filter(n=>!n.shipped),e=l.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Le([...t,...e],cT)} ${$e("mould")}
  </section>`}function cT(t){let e=t.shipped?pT(t.file):gT(t.file),n=()=>Promise.resolve(ks(t.file));return nn({kind:Vt,one:t,facts:e,picture:t.file,open:n})}var pT=t=>l.catalogue.filter(e=>e.path===t).map(e=>`${O(St(l.units,e.brimful_ml))}, ${K(e.cavities,"cavity","cavities")}; ${e.description}`);function mT(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${fT()}
    <div class="choice">
      ${Object.entries(wa).map(([t,e])=>r`<button type="button" @click=${()=>Og(t)}>${e}</button>`)}
    </div>
  </section>`}function fT(){return mr(Vt).map(t=>{let e=String($t(t.text)?.name??"").trim()||hT(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>lt(()=>ba(t))}>Continue</button>
        <button type="button" @click=${()=>{Dn(Vt,t.id),nt()}}>Discard it</button>
      </div>
    </div>`})}var hT=({file:t})=>l.files?.moulds.find(e=>e.file===t)?.name;function gT(t){let e=cf(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[O(St(l.units,e.brimful_ml)),K(e.cavities,"cavity","cavities")]:["measuring ..."]}var _T=300,$T=1e3;function xa(){let{quoted:t,plan:e,quote_wish:n,is_old:o}=l,i=t?.of===e&&t?.wish===n;!i&&!o&&wT();let s=i?t?.complaint:void 0;return{quote:t?.quote,complaint:s,is_old:o||!i||s!==void 0}}function Ld(){l.quoted&&h({quoted:{...l.quoted,of:void 0}})}var Ts,Cd=!1;function wT(){let{plan:t,quote_wish:e}=l;Cd||Ts?.of===t&&Ts?.wish===e||(window.clearTimeout(Ts?.timer),Ts={of:t,wish:e,timer:window.setTimeout(()=>{yT()},l.quoted?_T:0)})}var Ta=t=>t.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function e_(t,{numbers:e="",by:n,figure:o}){let i=Ta(e);return{...t,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var Ra=()=>e_({file:l.run.file,run:l.run.now},l.quote_wish);function bT(t,{numbers:e=""}){return t.field==="/sell"&&Ta(e)?{...t,file:"",field:"sell"}:t}async function yT(){Ts=void 0;let{run:t,plan:e,planned:n,quote_wish:o,is_old:i}=l;if(!(!e||!n||i)){Cd=!0;try{let s=await Zc(e_(n,o));t===l.run&&h({quoted:{of:e,wish:o,quote:s}})}catch(s){if(!(s instanceof v))throw s;if(t!==l.run)return;let a=bT(s.complaint,o);h({quoted:{of:e,wish:o,quote:l.quoted?.quote,complaint:a}}),s.may_pass&&window.setTimeout(Ld,$T)}finally{Cd=!1}}}var vT=300,kT=1e3,Bd=t=>{let{by:e,figure:n}=l.quote_wish;return[t.open.now,t.open.file,t.times,e,n,l.plan,co()]},n_=(t,e)=>t!==void 0&&t.every((n,o)=>n===e[o]);function o_(){let t=Lt(),{quoted:e}=t;if(!mn(t.open.now)||t.open.theirs)return{is_old:!0};let n=n_(e?.of,Bd(t));!n&&!l.is_old&&xT(t);let o=n?e?.complaint:void 0;return{quote:e?.quote,complaint:o,is_old:l.is_old||!n||o!==void 0}}function Ed(){let{quoted:t}=Lt();t&&y(Lt(),{quoted:{...t,of:[]}})}function Id({open:t,times:e}){let{by:n,figure:o}=l.quote_wish,i=Ta(e);return{file:t.file,order:t.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var Sa,Wd=!1;function xT(t){let e=Bd(t);Wd||n_(Sa?.of,e)||(window.clearTimeout(Sa?.timer),Sa={of:e,timer:window.setTimeout(()=>{TT(t)},t.quoted?vT:0)})}async function TT(t){if(Sa=void 0,t===l.order){Wd=!0;try{if(await Ue(),await pn(),await Io(),!mn(t.open.now))return;let e=Bd(t);await RT(t,e)}catch(e){if(!(e instanceof v))throw e}finally{Wd=!1,y(t,{})}}}async function RT(t,e){try{y(t,{quoted:{of:e,quote:await Xc(Id(t))}})}catch(n){if(!(n instanceof v))throw n;y(t,{quoted:{of:e,quote:t.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>t===l.order&&Ed(),kT)}}var mi={of:"order",at:"/lines",in_order:!0,stays:!0};function i_(){return r`<section class="card" aria-label="The order">
    <div class="row">
      ${f({of:"order",label:"For",at:"/for",optional:!0})}
      ${f({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${f({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${C("order","/lines")} ${x(mi).map((t,e)=>ST(e))} ${DT()}
  </section>`}var s_=()=>(l.files?.runs??[]).filter(({shipped:t})=>!t);function r_(t){let e=dn(Lt().open.file,t);return l.files?.runs.find(n=>n.file===e)}var a_=t=>r_(t)?.name||t;function l_(t){let e=Pn(Lt().open.now).map(({run:n})=>n);return s_().filter(({file:n})=>n===t||!e.includes(n)).map(n=>[n.file,n.name||n.file])}function ST(t){let{run:e}=Pn(Lt().open.now)[t]??{run:""},n=`/lines/${t}`,o=r_(e)?.pieces,i=e?a_(e):`line ${t+1}`;return r`<div class="row" id=${W(mi,t)} role="group" aria-label=${i}>
    ${gt({of:"order",label:"Run",at:`${n}/run`,answers:l_(e),unsaid:"choose ..."})}
    ${f({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${K(o,"piece")}`})}
    ${x(mi).length>1?f({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${H(mi,t,i)}
  </div>`}function DT(){let t=l_();return s_().length?t.length?r`<div class="row">
    ${gt({of:"order",label:x(mi).length?"Another run":"The run that is ordered",at:"/lines/-",answers:t,unsaid:"choose ...",optional:!0,chosen:"",take:e=>e&&j(mi,{run:e},a_(e))})}
  </div>`:r`${u}`:r`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var AT=300,PT=1e3,u_=()=>new Date().toDateString(),OT=()=>({file:l.run.file,run:l.run.now});function MT(){let{run:t,plan:e}=l;return{known:l.run_days,rests_on:()=>[l.plan,u_()],is_ready:e!==void 0&&!l.is_old,written:()=>Promise.resolve(),question:()=>l.planned??OT(),is_open:()=>t===l.run,keep:n=>h({run_days:n})}}function FT(){let{order:t}=l;if(!t)return;let{open:e}=t;return{known:t.days,rests_on:()=>[e.now,e.file,l.plan,co(),u_()],is_ready:mn(e.now)&&!e.theirs&&!l.is_old,written:async()=>{await Ue(),await pn(),await Io()},question:()=>({file:e.file,order:e.now}),is_open:()=>t===l.order,keep:n=>y(t,{days:n})}}var Da=t=>t==="run"?MT():FT(),d_=t=>Da(t).question(),c_=(t,e)=>t!==void 0&&t.length===e.length&&t.every((n,o)=>n===e[o]);function Aa(t){let e=Da(t);if(!e)return{is_old:!0};let{known:n,is_ready:o}=e,i=c_(n?.of,e.rests_on());!i&&o&&CT(t,e);let s=i?n?.complaint:void 0;return{days:n?.days,complaint:s,is_old:!o||!i||s!==void 0}}function Hd(t){let e=Da(t);e?.known&&e.keep({...e.known,of:[]})}var jd=new Map,qd=new Set;function CT(t,e){let n=e.rests_on(),o=jd.get(t);qd.has(t)||c_(o?.of,n)||(window.clearTimeout(o?.timer),jd.set(t,{of:n,timer:window.setTimeout(()=>{LT(t)},e.known?AT:0)}))}async function LT(t){jd.delete(t);let e=Da(t);if(e?.is_ready){qd.add(t);try{await e.written(),await WT(t,e)}catch(n){if(!(n instanceof v))throw n}finally{qd.delete(t),h({})}}}async function WT(t,{known:e,rests_on:n,question:o,is_open:i,keep:s}){let a=n();try{let d=await tp(o());i()&&s({of:a,days:d})}catch(d){if(!(d instanceof v))throw d;if(!i())return;s({of:a,days:e?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Hd(t),PT)}}var Vd=864e5,Un=t=>Math.round(Date.parse(`${t}T00:00Z`)/Vd),p_=t=>new Date(t*Vd).toISOString().slice(0,10),BT=t=>new Date(t*Vd).getUTCDay()===1,Ud=40,zd=18,ET=7,Jd=class{#n;#t;constructor({calendar:e}){this.#n=Un(e[0].day),this.#t=e.length}at=(e,n=0)=>`${this.#e(Un(e)+n)}%`;wide=e=>`${(100*e/this.#t).toFixed(3)}%`;#e=e=>(100*(e-this.#n)/this.#t).toFixed(3);mondays(){let e=Array.from({length:this.#t},(n,o)=>this.#n+o).filter(BT);return e.filter((n,o)=>o%Math.ceil(e.length/ET)===0).map(p_)}is_at_end=e=>Un(e)-this.#n>.88*this.#t};function m_(t){let e=new Jd(t),{calendar:n}=t;return r`<figure class="day-strip">
    <p class="aside">${Dt(n[0].day)} to ${Dt(n.at(-1).day)}</p>
    ${Nd(t,e,20,HT(e))}
    <p>Hours of your making days</p>
    ${Nd(t,e,Ud+2,NT(t,e))}
    ${t.batches.map(o=>r`<p>${VT(t,o)}</p>
          ${Nd(t,e,zd+6,UT(t,e,o))}`)}
    <figcaption>${QT(t)}</figcaption>
  </figure>`}var Nd=(t,e,n,o)=>r`<svg width="100%" height=${n} aria-hidden="true">
    ${R`${IT} ${qT(t,e)}
      ${e.mondays().map(i=>R`<line class="week" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${jT(t).map(i=>R`<line class="due" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,IT=R`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,jT=({days:t})=>t.filter(({acts:e})=>e.some(({act:n})=>n==="due")).map(({day:e})=>e),qT=({calendar:t},e)=>t.filter(({off:n})=>n).map(({day:n})=>R`<rect class="off" x=${e.at(n)} width=${e.wide(1)} height="100%" />`),HT=t=>t.mondays().filter(e=>!t.is_at_end(e)).map((e,n)=>R`<text class=${n%2?"between":""} x=${t.at(e)} dx="3" y="14">${sh(e)}</text>`);function NT({calendar:t},e){let n=Math.max(...t.map(({hours_min:i})=>i)),o=(i,s,a)=>{let d=Ud*a/n;return R`<rect class=${i} x=${e.at(s,.1)} width=${e.wide(.8)} y=${1+Ud-d} height=${d} />`};return t.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:s,used_min:a})=>R`${o("free",i,s)} ${o("used",i,a)}`)}function UT(t,e,n){let{poured:o,unmoulded:i,cured:s}=n,a=(p,m,_)=>{let w=Un(_)-Un(m);return R`<rect class=${p} x=${e.at(m)} y="3" width=${e.wide(w)} height=${zd} />`},d=o===i,c=(p,m)=>JT(t,p,n).map(_=>R`<circle class=${p} cx=${e.at(_,.5)} cy=${3+zd/2} r=${m} />`);return R`${a("mould",o,d?p_(Un(o)+1):i)}
    ${Un(i)<Un(s)?a("cure",i,s):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var zT=({of:t,runs:e,batches:n},o)=>t===o.of&&e.join()===o.runs.join()&&n.includes(o.batch),JT=({days:t},e,n)=>t.filter(({acts:o})=>o.some(i=>i.act===e&&zT(i,n))).map(({day:o})=>o);function VT({asked:t,batches:e},n){let o=({of:a,runs:d})=>a===n.of&&d.join()===n.runs.join(),i=t[n.of].lines.find(({runs:a})=>a.join()===n.runs.join())?.name??"",s=e.filter(o).length;return`${i}${s>1?`, batch ${n.batch} of ${s}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var KT=(t,e)=>r`<span><svg width="26" height="20" aria-hidden="true">${t}</svg> ${e}</span>`,Rs=t=>R`<rect class=${t} x="1" y="1" width="24" height="18" />`;function QT({calendar:t,days:e}){let n=i=>e.some(({acts:s})=>s.some(({act:a})=>a===i));return[[!0,Rs("used"),"hours used"],[!0,Rs("free"),"hours free"],[!0,Rs("mould"),"in the mould"],[!0,Rs("cure"),"curing"],[t.some(({off:i})=>i),Rs("off"),"day off"],[n("cast"),R`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),R`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out and set to chill"],[!0,R`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,s])=>KT(i,s))}var ko=t=>y(l.printing,t);function f_(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function h_(t){if(!l.printing.is_working){ko({is_working:!0,told:"Making it ...",on:l.view});try{await GT(),ko({told:await t()})}catch(e){ko({told:e instanceof Error?e.message:String(e)})}ko({is_working:!1})}}async function GT(){await Ue(),await pn();let t=l.view==="order"?l.order?.open:void 0,e=cn("run")??(t?.theirs&&t);if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var zn=()=>l.printing.on===l.view?l.printing.told:"",Gt=(t,e)=>()=>h_(async()=>{let n=URL.createObjectURL(await Ee(e));return f_(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),YT=t=>()=>h_(async()=>(f_(await sp(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),ZT=t=>{ko({paper:t}),localStorage.setItem("paper",t)},Pa=()=>at("Paper",l.printing.paper,[["A4","A4"],["Letter","Letter"]],ZT),zt=(t,e,n="",o=!1)=>r`<button
    type="button"
    class=${n}
    ?disabled=${l.printing.is_working||o}
    @click=${()=>{e()}}
  >
    ${t}
  </button>`,sn=({words:t,kind:e,file:n,of:o,is_asleep:i},s="")=>r`${zt(`${t}, to print`,YT({kind:e,...o}),s,i)}
  ${l.files?.makes_pdf?zt(`${t}, PDF`,Gt(`${n}.pdf`,{kind:`${e}-pdf`,...o}),"",i):""}`,Jn=t=>t.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var rn={run:"/money/currency",studio:"/currency"},Oa={run:"/money/prices",studio:"/prices"},We=()=>Ye(rn)!==void 0;function fi(){let[t,e]=[g("run",rn.run),g("studio",rn.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[rn,Oa]}var Ma=()=>D("studio",rn.studio)||String(Ye(rn)??"");async function g_(t,e=""){if(t==="run"||!l.order)return;let{open:n}=l.order,o=Pn(n.now).map(({run:s})=>dn(n.file,s)),i=o.find(s=>Fa(s,e))??o[0];(!o.includes(l.run.file)||o.some(s=>Fa(s,e)))&&await ze(i,"set-up")}var Fa=(t,e)=>t!==""&&(t===e||e.endsWith(`/${t}`)),__=t=>{requestAnimationFrame(()=>requestAnimationFrame(t))};function Ss(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(N(t,n));if(o)return o}}var $_=(t,e)=>{rt("set-up studio"),Et("studio",t),bn("set-up"),__(()=>Nt(Ss("studio",e)))};async function w_(t){await g_(t),it()||await vr(),$_("days","/days/making/monday")}var XT=["order","run","pour","pipe","studio"];async function Kd(t,{file:e,field:n}){if(t==="order"&&Fa(l.order.open.file,e))return Nt(Ss("order",n));await g_(t,e);let o=XT.find(i=>Fa(On(i)?.file??"",e));if(o==="pour"||o==="pipe")Qt(o);else{if(o==="studio")return $_(n.startsWith("/work")&&We()?"money work":"days",n);if(Ss("run",n))return Nt(Ss("run",n));bn("set-up")}__(()=>Nt(Ss(o??"run",n)))}function Ca(t){let{days:e,complaint:n,is_old:o}=Aa(t);return r`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?t0(t,n):u}
    ${e?r`<div class=${o?"old":""}>${e0(t,e)}</div>
            ${c0(t,o)}`:n?u:r`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function t0(t,e){let{field:n,is_fault:o}=e;return o?r`<p class="alarm" role="status">${Q(e)}</p>
      <button type="button" @click=${()=>Hd(t)}>Ask again</button>`:["/days","/days/making"].includes(n)||t==="run"&&!it()?r`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{w_(t)}}>To my making days</button>`:["/work","/work/each_batch"].includes(n)?r`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{Kd(t,{...e,field:"/work/each_batch"})}}
      >
        To the time of a batch
      </button>`:r`<p class="alarm" role="status">${yn(n)}${is(Q(e))}</p>
    ${n?r`<button type="button" @click=${()=>{Kd(t,e)}}>Go to the field</button>`:u}`}var e0=(t,e)=>r`${n0(t,e)} ${m_(e)} ${s0(t,e)} ${l0(e)} ${u0(e)} ${d0(e)}`,Qd=(t,e,n)=>r`<small>${t?e:n}</small>`;function n0(t,e){let{kept:n,promise:o,promise_proved:i,from:s}=e;return n===null?r`<p class="when">
        Begun today, ${Dt(s)}, promise it for <b>${Dt(o)}</b>.
        ${Qd(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>Nt(document.getElementById(N(t,"/due")))}>
        Give it a due day
      </button>`:n?o0(e):i0(e)}function o0({asked:t,latest_start:e,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:s,pieces:a,last_making_day:d}]=t;return r`<p class="when">
      Begin on <b>${Dt(e)}</b> at the latest to have ${K(a,"piece")} by
      <b>${Dt(s)}</b>.
      ${Qd(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?r`<p>The last day to pour any of it is ${Dt(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${Dt(o)}.
      ${i?u:r`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function i0({asked:t,in_time_proved:e}){let n=({pieces:o,in_time:i,due:s,rest_on:a})=>i?r`${i} of ${K(o,"piece")} by ${Dt(s)}, the rest on <b>${Dt(a)}</b>.`:r`none of the ${K(o,"piece")} by ${Dt(s)}, all of them on <b>${Dt(a)}</b>.`;return r`${t.filter(({kept:o})=>o===!1).map(o=>r`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Qd(e,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var s0=(t,{days:e})=>r`<details ?open=${t==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${e.map(n=>r`<li>
            <h3>${Dt(n.day)} <small>${r0(n)}</small></h3>
            <ul>
              ${n.acts.map(a0)}
            </ul>
          </li>`)}
    </ol>
  </details>`,r0=({hours_min:t,used_min:e,off:n})=>n?"day off":t&&e?`${jr(e)} of ${jr(t)}`:"",a0=({text:t,min:e,caution:n})=>r`<li>
    ${is(t)}${e?r` <small>${jr(e)}</small>`:u}
    ${n?r`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function l0({what_if:t,kept:e}){if(!t.length)return r`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:s,proved:a})=>[o&&!e?"keeps the due day, ":"",o?`begin on ${Dt(i)} at the latest`:`ready by ${Dt(s)}`,a?"":" (the search ended there)"].join("");return r`<h3>${e===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${t.map(o=>r`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function u0({extras:t}){return t.length?r`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${t.map(({run:e,batch:n,mould:o,cavities:i})=>r`<li>Batch ${n} of ${e} fills ${K(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function d0({notes:t}){let e=({severity:n,text:o})=>n==="note"?r`<p>${is(o)}</p>`:r`<p class="minded"><strong>Caution</strong> ${is(o)}</p>`;return t.length?r`<h3>To mind</h3>
        ${t.map(e)}`:u}function c0(t,e){let n=d_(t),o=Jn(n.file),i={plan:n,paper:l.printing.paper,"with-days":!0};return r`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${zt("Calendar file (.ics)",Gt(`${o} days.ics`,{kind:"calendar",days:n}),"",e)}
      ${sn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:e})}
      ${zt("Table of the days (.csv)",Gt(`${o} days.csv`,{kind:"days-csv",days:n}),"",e)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    <p role="status">${zn()}</p>
  </section>`}var xo=t=>(e,n,o="")=>r`<tr class=${o}>
      <th scope="row">${e}</th>
      ${t.map(i=>r`<td><b>${n(i)}</b></td>`)}
    </tr>`,Ds=(t,e)=>r`<tr class="group">
    <th scope="rowgroup" colspan=${e.length+1}>${t}</th>
  </tr>`;function As(t,e,n,o){let i=`quote ${e}`,s=l.open.has(i),a=`quote-${e.replaceAll(/\W/g,"-")}`,d=r`<button
    type="button"
    class="line"
    aria-expanded=${s?"true":"false"}
    aria-controls=${s?a:u}
    @click=${()=>qt("open",i)}
  >
    ${e}<span class="how" aria-hidden="true">${s?"\u2013":"="}</span>
  </button>`;return r`${xo(t)(d,n)}
  ${s?r`<tr class="opened">
          <td colspan=${t.length+1} id=${a}>${t.map(o)}</td>
        </tr>`:u}`}var Ps=(t,e)=>r`<div class="sum">
    <table>
      <caption>
        ${t}
      </caption>
      <tbody>
        ${e}
      </tbody>
    </table>
  </div>`;function La({parts:t,items:e},n){let o=t.find(i=>i.part===n);return o?e.some(i=>i.part===n&&i.cost!==null)?o.each:"unpriced":"\u2013"}var Wa=(t,{items:e},n)=>Ps(t,e.filter(o=>o.part===n).map(({name:o,amount:i,cost:s,how:a})=>r`<tr>
            <th scope="row">${o}</th>
            <td>${s??"unpriced"}</td>
            <td>${a||i}</td>
          </tr>`)),Ba=(t,e)=>As(t,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>r`${p0(e(n),n.cash)} ${m0(n.cash)}`),p0=(t,e)=>r`${Ps(`Packs to buy, ${t}`,(e?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:s,seller:a})=>r`<tr>
          <th scope="row">${n}</th>
          <td>${s}</td>
          <td>${o} × ${i}${a?`, ${a}`:""}</td>
        </tr>`))}
  ${e?.unpriced.length?r`<p class="alarm">No pack is listed, and not in the sum: ${e.unpriced.join(", ")}.</p>`:u}
  ${e&&!e.proved_cheapest?r`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,m0=t=>Ps("Left of them when all is made",(t?.left??[]).map(({shown_as:e,left:n})=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`));function Os(t){let e=t.flatMap(({prices:n})=>n);return e.filter((n,o)=>e.findIndex(({way:i})=>i===n.way)===o)}var b_=t=>`${S(t,1)} %`;function f0(t){return"margin_percent"in t?`margin ${S(t.margin_percent,2)} %`:"markup_percent"in t?`markup ${S(t.markup_percent,2)} %`:"price as set"}var Gd=(t,e)=>({prices:n})=>{let o=n.find(i=>i.way===t);return o?e(o):"\u2013"};function Ea(t,e,{way:n,by:o,ask:i,with_tax:s},a,d=u){let c=i===s,p=xo(t),m=w=>Gd(n,w),_=(w,b)=>a?r`${b} ${In(w)}`:b;return r`<tbody>
    ${Ds(r`<span class="way">${n}</span>, ${f0(o)}`,t)} ${d}
    ${p(e?c?"Ask, with tax":"Ask, without tax":"Ask",m(Yd),"ask")}
    ${e?p("tax in it",m(({tax:w})=>c?w:"none")):u}
    ${p("fees",m(({fees:w})=>w))}
    ${p("left for you",m(({profit:w})=>w))}
    ${p(_("margin","margin, of the price"),m(w=>b_(w.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(w=>b_(w.markup_percent)))}
  </tbody>`}var Yd=({ask:t,is_below_cost:e})=>e?r`<span class="below">${t}<small>below cost</small></span>`:t;function Ia(t,e){let n=o=>t.filter(({prices:i})=>i.some(s=>s.way===o&&s.is_below_cost));return Os(t).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>r`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${e(i)}
        </p>`)}var Zd=t=>t===1?"once":`${t} times`;function y_({times:t,currency:e,has_tax:n},o){let i=xo(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${t.map(s=>r`<th scope="col"><b>${Zd(s.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:s})=>s)}
        </tbody>
        <tbody>
          ${Ds("It costs",t)} ${t[0].lines.map((s,a)=>h0(t,a))}
          ${i("The whole order",({cost:s})=>s,"sum-of")}
        </tbody>
        <tbody>
          ${Ba(t,s=>`made ${Zd(s.times)}`)}
        </tbody>
        ${Os(t).map((s,a)=>Ea(t,n,s,a===0,$0(t,s.way)))}
      </table>
    </div>`}var Xd=({run:t,sell:e})=>`${t??""}, ${e} ${e===1?"piece":"pieces"}`,h0=(t,e)=>As(t,Xd(t[0].lines[e]),({lines:n})=>n[e].cost,({lines:n})=>r`${g0(n[e])} ${n[e].parts.map(({part:o})=>_0(n[e],o))}`),g0=t=>Ps(`A piece of ${Xd(t)}, ${t.make} made`,[...t.parts.map(({part:e})=>[e,La(t,e)]),["Cost of a piece",t.cost_each]].map(([e,n])=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`)),_0=(t,e)=>Wa(`${e} of all of them, ${Xd(t)}`,t,e),$0=(t,e)=>t[0].lines.map(({run:n},o)=>xo(t)(`${n??""}, a piece`,({lines:i})=>Gd(e,Yd)(i[o]))),v_=({times:t})=>Ia(t,e=>`the order loses money, made ${e.map(n=>Zd(n.times)).join(", ")}.`);function k_({times:t}){let e=t.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=t.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:s})=>s.map(a=>`${i??""}: ${a}`)));return n.push(...e.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?r`<div class="dangers">
    ${[...new Set(n)].map(o=>r`<p class="danger"><strong>${De}</strong> ${o}</p>`)}
  </div>`:u}function x_({times:t,remarks:e=[]}){let[{together:n,lines:o}]=t,i=n.flatMap(({cautions:s})=>s).filter(({severity:s})=>s!=="danger");return!n.length&&!e.length?u:r`<ul class="limits">
    ${n.map(s=>r`<li>
          <b
            >Poured together (${s.word}): ${Ce(s.lines.map(a=>o[a].run??""))} from one base,
            "${s.formula}", ${O(E(l.units,s.make_g))} in
            ${K(s.batches.reduce((a,{count:d})=>a+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:s})=>r`<li>${s}</li>`)} ${e.map(s=>r`<li>${s}</li>`)}
  </ul>`}function w0(t){return t.length<2?t[0]?.way:t.find(({way:e})=>e===l.printing.way)?.way}function ja({file:t,question:e,prices:n,is_old:o}){let i=Jn(t),s=w0(n),a={quote:n.length>1&&s?{...e,way:s}:e},d=n.map(p=>[p.way,p.way]),c={buy:{files:[t]}};return r`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?r`<p class="question">The price that is offered</p>
            ${at("The price that is offered",s,d,p=>y(l.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?sn({words:"Offer",kind:"offer",file:`${i} offer`,of:a,is_asleep:o||!s}):u}
      ${sn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:e}})}
      ${l.files?.studios.length?r`${sn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${zt("Shopping list, table",Gt(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?s?u:r`<p class="hint">An offer has one price: choose which.</p>`:r`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${zn()}</p>
  </section>`}var tc=class extends HTMLElement{#n;#t="";#e="";#i="";#o=new IntersectionObserver(([e])=>e.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#s()}disconnectedCallback(){this.#o.disconnect(),this.#r()}set words(e){this.#t=e}set question(e){JSON.stringify(e)!==JSON.stringify(this.#n)&&(this.#n=e,this.#r(),this.#a(),this.#s())}#s(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#r(){this.#e&&URL.revokeObjectURL(this.#e),[this.#e,this.#i]=["",""]}async#l(){this.#o.disconnect();let e=this.#n,[n,o]=await b0(e);if(e!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#e,this.#i]=[n,o],this.#a()}#a(){let e=this.#i||"Drawing ...";de(this.#e?r`<img src=${this.#e} alt=${this.#t} />`:r`<p class="hint">${this.#n?e:u}</p>`,this)}};async function b0(t){try{return[URL.createObjectURL(await Ee({kind:"picture",quote:t})),""]}catch(e){if(!(e instanceof v))throw e;return["",e.message]}}customElements.define("cost-picture",tc);function T_(t,e){let{costs:n,currency:o}=t;if(!n.length)return u;let[i,s]=[n[0],n.at(-1)],a=({sell:d,each:c})=>`${c} ${o} at ${d}`;return r`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${a(i)} to ${a(s)}, and where the money of a piece goes. The figures stand below.`}
        class=${e?"old":""}
        .question=${e?Mt:Ra()}
      ></cost-picture>
    </div>
    <details>
      <summary>The same in figures</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Pieces sold</th>
            <th scope="col">A piece costs, ${o}</th>
          </tr>
        </thead>
        <tbody>
          ${y0(t).map(({sell:d,each:c})=>r`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function y0({costs:t,numbers:e,steps:n}){let o=new Set([...e.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),t[0].sell,t.at(-1).sell]);return t.filter(({sell:i})=>o.has(i))}var R_=({sell:t})=>`${t} to sell`;function S_({numbers:t,currency:e,has_tax:n},o){let i=xo(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${t.map(s=>r`<th scope="col"><b>${s.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",s=>s.make)} ${i("fillings",s=>s.fillings)}
          ${i("batches",s=>s.batches)}
          ${t.some(s=>s.to_stock)?i("beyond those, at no cost",s=>s.to_stock):u}
        </tbody>
        <tbody>
          ${Ds("A piece costs",t)} ${v0(t).map(s=>k0(t,s))}
          ${i("Cost of a piece",s=>s.cost_each,"sum-of")} ${i("The whole run",s=>s.cost)}
        </tbody>
        <tbody>
          ${Ba(t,R_)}
        </tbody>
        ${Os(t).map((s,a)=>Ea(t,n,s,a===0))}
      </table>
    </div>`}var v0=t=>[...new Set(t.flatMap(({parts:e})=>e.map(({part:n})=>n)))],k0=(t,e)=>As(t,e,n=>La(n,e),n=>Wa(`${e} of the whole run, ${R_(n)}`,n,e)),D_=({numbers:t})=>Ia(t,e=>`each piece sold loses money, at ${e.map(({sell:n})=>n).join(", ")} to sell.`);function A_(){return r`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${We()?T0():x0()}
  </section>`}var x0=()=>r`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>ec()}>To the prices paid</button>`;function ec(t,e="lane-studio"){rt("set-up studio"),t&&Et("studio",t),bn("set-up"),requestAnimationFrame(()=>G(U(e)))}function T0(){let{quote:t,complaint:e,is_old:n}=xa();return r`${t?r`${R0(t)} ${D_(t)}`:u}
    <div class="row">${A0(e)}</div>
    ${nc()?u:oc(t?.currency,e)} ${e?D0(e):u}
    ${t?F0(t,n):e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}function R0({numbers:t}){let e=[...new Set(t.flatMap(o=>o.dangers))];if(!e.length)return u;let n=o=>t.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return r`<div class="dangers">
    ${e.map(o=>r`<p class="danger"><strong>${De}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var S0=["sell","margin","markup","price"],hi=(t,e)=>t?.file===""&&t.field===e?Q(t):void 0;function D0(t){return S0.some(e=>hi(t,e))?u:r`<p class="alarm" role="status">${yn(t.field)}${Q(t)}</p>
    ${t.is_fault?r`<button type="button" @click=${Ld}>Ask again</button>`:t.field.startsWith("/")?r`<button type="button" @click=${Pd}>Go to the field</button>`:u}
    ${Dd(t)}`}function qa({id:t,label:e,unit:n,value:o,hint:i,complaint:s,take:a,left:d}){return r`<div class="field ${s?"wants":""}">
    <label for=${t} data-said=${n??u}>${e}</label>
    <input
      id=${t}
      .value=${F(o)}
      @input=${c=>a(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${s?"true":"false"}
      aria-describedby=${s||i?`${t}-said`:u}
    />
    ${ft(t,s,i)}
  </div>`}function A0(t){let{numbers:e}=l.quote_wish;return qa({id:"quote-numbers",label:"Numbers of pieces",value:e??String(l.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:hi(t,"sell"),take:n=>Ii({numbers:n}),left:()=>{e!==void 0&&!e.trim()&&Ii({numbers:void 0})}})}var P0=()=>it()?ec("money asking",`${N("studio","/asking")}-name`):ec(),nc=()=>Object.keys(g("studio","/asking")??{}).length>0,O0=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],M0={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function oc(t,e){let{by:n,figure:o}=l.quote_wish,{label:i,unit:s}=M0[n??"price"],a=d=>s&&Qe(d)?`${d.trim()} ${s}`:d;return r`${at("A price, for this moment",n,O0,d=>{Ii({by:d,figure:""}),G(U("quote-figure"))})}
    ${n?r`<div class="row">
            ${qa({id:"quote-figure",label:i,unit:s||t,value:s?o.replace(/ %$/,""):o,complaint:hi(e,n),take:d=>Ii({figure:a(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${P0}>Keep my ways of selling</button>`}function F0(t,e){let n=[...new Set(t.numbers.flatMap(o=>o.unpriced))];return r`${n.length?r`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${S_(t,e)} ${C0(t,e)} ${T_(t,e)}
  ${ja({file:l.run.file,question:Ra(),prices:t.numbers[0].prices,is_old:e})}`}function C0({numbers:t,steps:e,pack_steps:n,gaps:o,currency:i},s){let a=d=>d===null?"":`, ${d} ${i} more`;return r`<div class="worth-making ${s?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${t.flatMap(({around:d})=>d.map(({text:c})=>r`<li><b>${c}</b></li>`))}
      ${o.map(({from:d,to:c,why:p})=>r`<li><b>${d===c?d:`${d} to ${c}`} cannot be made: ${p}.</b></li>`)}
    </ul>
    ${e.length?r`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${e.map(d=>r`<li><b>${d.sell}: ${d.begins}${a(d.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length?r`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(d=>r`<li><b>${d.sell}: ${d.shown_as}${a(d.more)} to lay out</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function P_(){let{order:t}=l;if(!t)return r`<h1 tabindex="-1">Order</h1>`;let{open:e}=t,{due:n}=e.now;return r`${Xe(e)} ${tn(e)}
    <h1 tabindex="-1">${String(e.now.for||"Order")}</h1>
    <p class="aside">${e.file}${n?`, due ${bt(String(n))}`:u}</p>
    ${i_()} ${mn(e.now)?Ca("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${mn(e.now)?W0():L0()}
    </section>
    ${mn(e.now)?q0():u}`}var L0=()=>r`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function W0(){let{quote:t,complaint:e,is_old:n}=o_();return r`${t?r`${k_(t)} ${v_(t)}`:u}
    <div class="row">${B0(e)}</div>
    ${nc()?u:oc(t?.currency,e)} ${e?I0(e):u}
    ${t?r`${j0(t)} ${x_(t)} ${y_(t,n)}
          ${ja({file:Lt().open.file,question:Id(Lt()),prices:t.times[0].prices,is_old:n})}`:e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}var B0=t=>qa({id:"order-times",label:"How often it is made",value:Lt().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:hi(t,"times"),take:e=>y(Lt(),{times:e})}),E0=["times","margin","markup","price"];function I0(t){if(E0.some(n=>hi(t,n)))return u;let e=he("order");return r`<p class="alarm" role="status">
      ${e?r`${yn(t.field)}${Q(t)}`:t.line}
    </p>
    ${t.is_fault?r`<button type="button" @click=${Ed}>Ask again</button>`:e&&Ge()?r`<button type="button" @click=${()=>Nt(Ge())}>Go to the field</button>`:u}`}function j0({times:t}){let e=[...new Set(t.flatMap(n=>n.unpriced))];return e.length?r`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${e.join(", ")}. The cost leaves it out.
  </p>`:u}function q0(){let{file:t,now:e}=Lt().open,n={plan:{file:t,order:e},paper:l.printing.paper};return r`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${Pa()}
    <div class="choice">
      ${sn({words:"Bench sheets",kind:"sheet",file:`${Jn(t)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${zn()}</p>
  </section>`}var H0=(t,e)=>(t.due??"~").localeCompare(e.due??"~")||(e.changed??"").localeCompare(t.changed??"");function O_(){let t=[...l.files?.orders??[]].sort(H0),e=l.new_order.trim(),n=()=>{lt(async()=>{await jf(e),h({new_order:""})})};return r`${_e("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${t.length?Le(t,N0):r`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${F(l.new_order)}
            @input=${o=>h({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e} @click=${n}>Begin the order</button>
      </div>
      ${e?"":r`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${$e("order")}`}function N0(t){let{pieces:e,due:n,changed:o}=t,i=[e===void 0?"":K(e,"piece"),n?`due ${bt(n)}`:"",o?`changed ${bt(o)}`:""].filter(Boolean);return nn({kind:so,one:t,facts:i,open:()=>ns(t.file)})}function F_(){if(l.view==="order"&&l.order)return M_(l.order.open);let t=Fn();if(t)return M_(t);let e=U0();if(e)return e;let{run:n}=l,o=l.formula_of==="apart"||!(J(n)||n.theirs||n.failed);return l.view==="formula"&&o?z0():n.theirs?rc(n):n.failed?Na(`Not saved: ${n.failed}`):J(n)?sc:Ha(n.shipped?ic:`Saved in ${n.file}`)}function M_(t){return t.theirs?rc(t):t.failed?Na(`Not saved: ${t.failed}`):J(t)?sc:Ha(t.shipped?ic:`Saved in ${t.file}`)}var ic="Built-in: your first change is saved as a copy.",sc={words:"Saving ...",is_kept:!1},Ha=t=>({words:t,is_kept:!0}),Na=t=>({words:t,is_kept:!1,is_failed:!0}),rc=t=>Na(uo(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function U0(){let t=l.formulas.apart?"apart":"run",e=cn(t);if(e)return rc(e);if((t==="apart"?[l.formulas.apart]:[l.formulas.pour,l.formulas.pipe]).some(o=>o&&J(o)))return l.complaint?.file===""?Na(`Not saved: ${l.complaint.problem}`):sc}function z0(){let t=l.formulas[l.formula_of];return Ha(t?t.shipped?ic:`Saved in ${t.file}`:"")}function za(){let{view:t,mould:e,order:n,past:o,future:i}=l;if(t==="moulds"&&e)return Ua(e,Wf,Bf);let s=ue(t)?Fn():void 0;return s?Ua({past:C_(s,o),future:C_(s,i)},zi,tu):ue(t)?{undo:Vi()&&zu,redo:ru()&&Wh}:t==="order"&&n?Ua(n,qf,Hf):Ua({past:o,future:i},zi,tu)}function C_(t,e){let n=e.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===t);return o&&o.now!==t.now?e:[]}var Ua=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var L_={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips"},J0={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},V0="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",K0="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",ac=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${R`<path d=${t} />`}</svg>`;function E_(){let t=l.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${lp.map(e=>I_(e,L_[e],r`${L_[e]}`))}
              </nav>
              ${G0()}`}
    </div>
    ${t?u:Y0()}
  </header>`}var Q0={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`},Ja=["metric","both","us"],W_={metric:"g",both:"both",us:"oz"},B_=t=>()=>{h({units:t}),localStorage.setItem("units",t)};function G0(){let t=Ja[(Ja.indexOf(l.units)+1)%Ja.length];return r`<div class="tools units" role="group" aria-label="Units">
      ${Ja.map(e=>r`<button type="button" aria-pressed=${l.units===e?"true":"false"} @click=${B_(e)}>
            ${Q0[e]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${B_(t)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${W_[l.units]}<span
        class="unseen"
        >. Change to ${W_[t]}</span
      >
    </button>`}function Y0(){let{undo:t,redo:e}=za();return r`<div class="bar">
    ${l.run.file?Z0():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${ac(V0)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${ac(K0)}<span>Redo</span></button>
    </div>
    ${l.run.file||l.view==="order"?nR():u}
  </div>`}function Z0(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(l.run.now.name??l.run.file)}</p>
    <div class="rail-views">${up.map(X0)}</div>
  </nav>`}function X0(t){let[e,n]=J0[t],o=tR(t);return I_(t,o?`${e}, ${o.words}`:e,r`${ac(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function tR(t){if(t==="watch"&&Jf())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="set-up"&&eR())return{sign:"\u25CB",words:"missing"}}var eR=()=>l.complaint!==void 0&&!l.complaint.is_fault;function I_(t,e,n){let o=l.view===t||l.view==="order"&&t==="orders";return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{bn(t)}}
  >
    ${n}
  </button>`}function nR(){let{words:t,is_kept:e,is_failed:n}=F_();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}var j_=()=>r`<section class="card" aria-label="What it is for">
      <div class="row">
        ${f({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${f({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${Ca("run")}`;function H_(t){if(!Dh(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=It(e)?`${K(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${q_(t,"pour","The base, whole run")}
      ${e.pipe?q_(t,"pipe","The topping, whole run"):u} ${oR(t)}
    </div>
  </section>`}function q_(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...Jh(i),...ea(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:a,i:d})=>Va(`${e}.ingredients.${d}.g`,a.name,vo(l.units,a)))}
    ${Va(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",E(l.units,i.make_g))}
  </div>`}var Va=(t,e,n)=>M({key:`needs.${t}`,label:e,shown:n,of:t});function oR(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,a)=>s.colours.map((d,c)=>({layer:s,one:d,i:a,j:c}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>mt(l.units,Wt(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:a,i:d,j:c})=>Va(`pour.layers.${d}.colours.${c}.g`,`${a.name}, for ${s.name}`,vo(l.units,a)))}
    ${o.map((s,a)=>Va(`dust.${a}.g`,s.name,i(s)))}
  </div>`}function N_(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:a}=t.piece,d=s?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${M({key:"piece.fresh",label:c("Fresh"),shown:E(l.units,n),of:"piece.fresh_g"})}
      ${o===null?u:M({key:"piece.cured",label:c("Cured"),shown:E(l.units,o),of:"piece.cured_g"})}
      ${s?M({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:E(l.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:M({key:"piece.label",label:"Net weight for the label",shown:E(l.units,i,0),of:"piece.label_g"})}
      ${a?M({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[a.width_mm,a.depth_mm,a.height_mm].map(p=>S(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${M({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${lc(t)}
    </section>
    ${A_()} ${H_(ri(t))}`}function lc(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[z_,dc]=[440,270],[Ms,uc,Ka,gi]=[64,z_-10,10,dc-52],iR=6,sR=8;function U_(t){let e=t/iR,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var _i=t=>S(t,1);function J_(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=d=>_i(Ms+(uc-Ms)*d/n),s=d=>_i(gi-(gi-Ka)*d/o),a=t.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${s(c)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${z_} ${dc}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${U_(n).map(d=>R`<path class="grid" d="M${i(d)} ${Ka}V${gi}" />
            <text x=${i(d)} y=${gi+20} text-anchor="middle">${_i(d)}</text>`)}
      ${U_(o).map(d=>R`<path class="grid" d="M${Ms} ${s(d)}H${uc}" />
            <text x=${Ms-8} y=${s(d)} text-anchor="end" dominant-baseline="middle">${_i(d)}</text>`)}
      ${R`<text x=${(Ms+uc)/2} y=${dc-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Ka+gi)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${a}" />
        <path class="pour-line" d="M${i(e)} ${Ka}V${gi}" />`}
    </svg>
    ${rR(t)}`}function rR(t){let e=Math.max(1,Math.round(t.length/sR)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:s})=>r`<tr>
              <th scope="row">${_i(o)}</th>
              <td>${_i(i)}</td>
              <td>${S(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Qa=Math.PI/8,aR=500,cc=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#l="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#w()},{timeout:1500})}async#w(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},aR))}#c(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#c();if(e!==this.#l){try{let n=await Ee(JSON.parse(e));if(e!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(Qo(await n.arrayBuffer())),this.#l=e,this.#a=""}catch(n){if(!(n instanceof v))throw n;this.#a=n.message}this.#u()}}#_(e){e(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#a}</p>`;de(r`${e} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-Qa)}>Turn left</button>
        <button type="button" @click=${e(Qa)}>Turn right</button>
        <button type="button" @click=${n(Qa)}>From above</button>
        <button type="button" @click=${n(-Qa)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",cc);function V_(t){let{measured:e}=l;if(!e)return r`<p role="status">${l.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${M({key:"mould.brimful",label:"To the brim",note:`${O(Tt(l.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:St(l.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${J_(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${lR(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function lR(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:l.run.file,run:l.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var uR=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function K_(t){let{batch:e}=l.printing;return It(t)&&e<=t.pieces.batches?e:0}function dR(t){if(!It(t))return u;let e=K_(t),n=i=>ko({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${F(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${uR(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${en(t,s)}`))}
      </select>
    </div>
  </div>`}function Q_(t){let{paper:e}=l.printing,n=Jn(l.run.file),o={file:l.run.file,run:l.run.now},i=l.measured?.mould,s={file:i,"below-brim":`${t.pour.below_brim_mm} mm`},a=K_(t),d={plan:o,paper:e,...a?{batch:String(a)}:{}};return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${Pa()} ${dR(t)}
    <div class="choice">
      ${sn({words:"Bench sheet",kind:"sheet",file:`${n}${a?` batch ${a}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?zt("Label draft",Gt(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${zt("Drawing of the pour, true size",Gt(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${zt("Drawing of the piece",Gt(`${n}.svg`,{kind:"piece",plan:o}))}
      ${zt("Whole piece, GLB (3D viewer)",Gt(`${n}.glb`,{kind:"glb",plan:o}))}
      ${zt("Whole piece, STL (3D printing)",Gt(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?r`${zt("Filled cavity, GLB (3D viewer)",Gt(`${n} cavity.glb`,{kind:"glb",gauge:s}))}
            ${zt("Cavity, STL (3D printing)",Gt(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${zn()||`The drawing has the pour line ${O(Tt(l.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var G_=t=>Q_(t);var Rt={at:"/decorations"},$i=t=>`${Rt.at}/${t}`,Vn=t=>D("run",`${$i(t)}/name`).trim()||`Decoration ${t+1}`,Yt=()=>$(l.run.now,"/cut")!==void 0,To=t=>["mould","rod","drizzle","bought"].find(e=>g("run",`${t}/${e}`)!==void 0),Fs=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var le="/batch",Y_=t=>`${t}/moulds_owned`;function pc(){return P({name:"batches",pointers:[le],summary:`Batches${cR()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${C("run",le)}
        <div class="row">${pR()} ${fR()}</div>
        ${T({question:"Cavities at each filling",at:le,asked_at:`${le}/fill`,chosen:g("run",`${le}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>Z_("fill",t==="full"?t:void 0)})}`})}function cR(){let[t,e]=[`${le}/pieces`,`${le}/casts`].map(o=>D("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function Z_(t,e){let n=pt("run",le,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function pR(){let t=g("run",`${le}/casts`)!==void 0,e=(n,o)=>f({label:o,at:`${le}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return Yt()?g("run",`${le}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${mR}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function mR(){B("run","Counted in loaves",le,Z_("pieces",void 0))}function fR(){let t=`${le}/whippings`;return!se()&&g("run",t)===void 0?u:f({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var hR={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},we={at:"/dust"},Ga=t=>D("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function X_(){rt("set-up dust"),j(we,{name:""},"Dust")}function gR(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function t$(t){let e=`/dust/${t}`,n=gR(e),o=Ga(t),i=s=>({...pt("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...hR[s]});return r` ${f({label:"Which powder",at:`${e}/name`})}
  ${T({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?f({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${f({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${f({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${f({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${qn("run",e,o)}`}var _R={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function $R(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function e$(t,e){let n=$R(t),o=i=>({...pt("run",t,["on_top","buried"]),..._R[i]});return To(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:To(t)==="bought"?r`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:P({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${T({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?wR(`${t}/on_top`):n==="buried"?yR(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function wR(t){return r`<div class="row">
      ${f({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${f({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${n$(t,"It is turned")}`}function n$(t,e){let n=o=>f({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return P({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var bR=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function yR(t,e){let n=`${t}/buried`,o=e===x(Rt).findIndex(a=>a.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),s=g("run",`${n}/placed`);return r`${C("run",n)}
  ${f({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${T({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:a=>a,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${T({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:bR,puts:a=>kR(t,a)})}
  ${i==="said"?TR(t,e):u}`}var vR=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${R`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,o$={x:"",y:"",height:""};function kR(t,e){let n=pt("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${Fs(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>o$);return{...pt("run",t,["per_piece","per_cast"]),[i$(t)]:i.length,buried:{...n,places:i}}}var i$=t=>Yt()?"per_cast":Fs(t)??"per_piece";function xR(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,a)=>A(s,`${t}/${a}`,void 0),n);return A(i,`${t}/${i$(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function TR(t,e){let n=xR(t),o=x(n);return r`${vR()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let a=`${n.at}/${s}`,d=c=>f({label:`Place ${s+1}: ${c}`,at:`${a}/${c}`,unit:"mm",short:!0});return r`<div class="part" id=${W(n,s)} role="group" aria-label="Place ${s+1} of ${Vn(e)}">
        ${C("run",a)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${H(n,s,`place ${s+1} of ${Vn(e)}`)}
        </div>
        ${n$(a,`Place ${s+1} is turned`)}
      </div>`})}
    ${Y(n,"Add a place",()=>j(n,o$,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var r$=t=>`${t} made`;function RR(){let t=$i(x(Rt).length),e=Yt()?{}:{per_piece:""};rt("set-up decorate");for(let n of[r$(t),`${t} where`])Et("run",n);j(Rt,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function a$(){let[t,e]=[x(Rt).length>0,x(we).length>0];return r`${Y(Rt,t?"Add another decoration":"Add a decoration",RR)}
  ${Y(we,e?"Add another dust":"Add a dust",X_)}`}function l$(t){let e=$i(t);return r` ${C("run",e)} ${OR(e)}
    <div class="row">
      ${DR(e)} ${f({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${To(e)==="bought"?u:SR(e)}
    </div>
    ${e$(e,t)} ${qn("run",e,Vn(t))}`}var SR=t=>r`${f({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
  ${f({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
  ${f({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}`;function DR(t){let e=Fs(t),n=X("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(Yt()&&e==="per_piece"))return r``;let o=e==="per_cast"?Yt()?"In each loaf":"In each cast":Yt()?"On each bar":"On each piece",i=s=>({...pt("run",t,["per_piece","per_cast"]),[s]:e?g("run",`${t}/${e}`):""});return r`${Yt()?T({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?f({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var AR={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},s$={density:"",melt_loss:"",left_in_jug:""};function PR(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...e==="drizzle"||e==="bought"?["on_top","buried"]:[],...e==="bought"?[...Object.keys(s$),"time_per_tray_fill"]:[]],o=To(t)==="bought"&&e!=="bought"?s$:{};return{...pt("run",t,n),...o,...AR[e]}}function OR(t){let e=To(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${t}/${o}`);return P({name:r$(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${f({label:"What it is called",at:`${t}/name`})}
          ${f({label:e==="bought"?"What is bought":"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">${e==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${T({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>PR(t,o)})}
        ${e?MR[e](t):u}
        ${e==="bought"?u:f({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var MR={mould:FR,rod:t=>r`<div class="row">
      ${f({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${f({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${f({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${f({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:t=>f({label:"One weighs",at:`${t}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function FR(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${oi("Cast in",`${t}/mould`,l.files?.moulds)}
  ${T({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?f({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):f({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${T({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function u$(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!se()?u:r`<div class="labelled">
      ${Au(t,"Make one pot of lye solution for both",e,{})}${gn("lye_solution")}
    </div>
    ${Pe("lye_solution")}
    ${e?f({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function d$(t){let e={at:"/bottles"},n=x(e);return P({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&ht(t)?` Weights are of ${ht(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,a=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${W(e,i)} role="group" aria-label=${a}>
            <div class="part-head">
              <p class="part-title">${a}</p>
              ${H(e,i,a)}
            </div>
            ${C("run",s)}
            <div class="row">
              ${f({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${f({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?CR(t,i,a):u}
          </div>`})}
        ${Y(e,"Use up a bottle",()=>j(e,{name:"",holds:""},"bottle"))}`})}function CR(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>M({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${S(i.percent_of_batter,2)} % of the batter`,shown:mt(l.units,Wt(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var Cs="/label",fc=()=>g("run",Cs)!==void 0;function c$(){let e=g("studio",wi.studio)!==void 0?{weight_spread:""}:{market:""};rt("set-up label"),B("run","Label added",Cs,e,U("lane-label"))}function p$(){return r`${C("run",Cs)} ${LR()}
    <button type="button" @click=${()=>B("run","Label removed",Cs,void 0)}>Remove the label</button>`}var wi={run:"/label/market",studio:"/label/market"};function hc(){let{of:t,at:e}=us(wi);return r`${T({of:t,question:"Where it is sold",at:t==="run"?Cs:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?WR(n):n})}
  ${jn("Where it is sold",[wi])}`}function LR(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${hc()}
  ${T({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:BR})}
  ${t==="weighed"?ER():r`<div class="row">
          ${f({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${f({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${f({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${Ye(wi)==="EU"||g("run",mc)!==void 0?Au(mc,"With the e mark",g("run",mc)===!0,!0):u}`}var mc="/label/e_mark";function WR(t){return{...pt("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function BR(t){let e=pt("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function ER(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${x(t).map((e,n)=>r`<div class="row" id=${W(t,n)}>
            ${f({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${H(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${Y(t,"One more piece",()=>j(t,"","piece"))}`}function m$(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(c=>`${qu(t)?`${c.count} of `:""}${en(t,c)}`),a=`Made in ${e} batches${qu(t)?": ":" of "}${Ce(s)}; ${Qr(n,o)}.`,d=t.batch_limits.filter(c=>c.sets);return r`<div class="batches-told of-plan">
    ${It(t)?r`<p><b>${a}</b></p>`:u}
    ${i>0?r`<p>
            ${K(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?r`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var f$=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function h$(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(c=>!c.buried&&c.cavity_fills>0),s=i?w$(i):0,a=i?i.on_top?.stands_proud_mm??1.9*s:0,d=t.pipe?IR(t,e,n,a):0;return{brim:n,line:o,topping:d,ball:s,proud:a,top:Math.max(n,(t.pipe?n:o)+d+a)}}function IR(t,e,n,o){let i=Ae($(l.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[a,d]=uu(e,e.brim-.01),c=Math.PI/4*(d-a)**2;return 1500*t.pipe.visible_each_ml/c}function gc(t,e){let[n,o]=uu(t,t.brim-.01),i=(n+o)/2,s=3,a=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),d=m=>-(e.brim+e.topping*m/s),c=(m,_,w)=>{let b=i+w*(Math.max(a(m),a(_))+(o-n)*.035);return`C${b} ${d(m)} ${b} ${d(_)} ${i+w*a(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<s;++m)p+=c(m,m+1,-1);p+=`L${i+a(s)*.94} ${d(s)}`;for(let m=s;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Ls=(t,e)=>t===e?`shaded ${e}`:"plain";function Kn(t,e,n=u){return r`${g$(t,e,n)}
  ${t==="decorate"&&_c(e)?r`<p class="hint">${_c(e)}</p>`:u}`}var Qn=(t,e)=>r`<div class="small-view">${g$(t,e,u)}</div>`;function g$(t,e,n){let o=l.measured?.outline;if(!o)return r`<p class="drawing hint">${l.measuring_failed??"Reading the mould ..."}</p>`;let i=h$(e,o),s=o.right-o.left,a=Math.max(6,s*.1),d={x:o.left-a,y:-i.top-a,w:s+2*a,h:i.top+2*a};return r`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${QR(t,e)}>
      ${jR(t)} ${qR(t,e,o,i)} ${NR(t,e,o,i)} ${UR()}
      ${zR(t,e,o,i)} ${KR(t,e,o,i)}
      ${R`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function _$(t,e){let n=l.measured.outline,o=h$(t,n),i=n.right-n.left,s=Math.max(6,i*.1),a=o.top+2*s;return{share:(o.top+s-e)/a,per_mm:1/a,w:i+2*s,h:a}}function jR(t){return R`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${f$($$())} /></clipPath>
  </defs>`}function $$(){let t=l.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function qR(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],a=(s.length?s.map(d=>HR(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return R`<g clip-path="url(#cavity-${t})">${a.map((d,c)=>R`<path class="whole" d=${d} /><path class="${Ls(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?R`<path fill="url(#hatch-${t})" d=${d} />`:u}`).reverse()}</g>`}function HR(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function NR(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(l.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,a=(n.left+n.right)/2;return R`<g clip-path="url(#cavity-${t})"><rect class=${Ls(t,"pipe")} x=${a-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function UR(){return R`<path class="wall" fill-rule="evenodd" d=${f$($$())} />`}function zR(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,a=e.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return R`
    ${e.pipe?R`<path class=${Ls(t,"pipe")} d=${gc(n,o)} />${t==="pipe"?R`<path fill="url(#dots-pipe)" d=${gc(n,o)} />`:u}`:u}
    ${t==="dust"?JR(e,n,o):u}
    ${o.ball?R`<circle class=${Ls(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${a.map(({embed:d,one:c,i:p})=>VR(Ls(t,"decorate"),i,d,c,p))}`}function JR(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return R`<path class="powder" d=${t.pipe?gc(e,n):o} />`}function VR(t,e,n,o,i){let[s,a]=[e+n.middle_mm[0],n.middle_mm[2]],d=Ae($(l.run.now,`/decorations/${i}/rod/diameter`)),c=Ae($(l.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return R`<circle class=${t} cx=${s} cy=${-a} r=${w$(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),w=d/2*Math.sqrt(1-_*_),b=c*_+2*w,k=-180/Math.PI*Math.atan2(m,p);return R`<rect class=${t} x=${-b/2} y=${-d/2} width=${b} height=${d} rx=${w} ry=${w?d/2:0}
    transform="translate(${s} ${-a}) rotate(${k})" />`}var w$=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function _c(t){let e=(t.decorations??[]).filter((n,o)=>$(l.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function KR(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return R`${Array.from({length:i-1},(s,a)=>{let d=n.left+(n.right-n.left)*(a+1)/i;return R`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function QR(t,e){let n=O(Tt(l.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${_c(e)}`.trim()}var GR=t=>`set-up ${t}`;function Zt({name:t,title:e,drawing:n,result:o,about:i,form:s}){let a=GR(t),d=()=>fe({part:e,fold:a},s);if(_n())return r`${d()}`;i.some(([m,_])=>Bt(m,_))&&rt(a);let c=l.open.has(a),p=ni().filter(({folds:m})=>m.includes(a)).length;return r`<section class="lane ${t} ${c?"is-open":""}" aria-labelledby="lane-${t}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${t}" tabindex="-1">${e}</h2>
        ${o} ${p?r`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${e}"
        @click=${()=>qt("open",a)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?r`<div class="lane-body">${d()}</div>`:u}
  </section>`}var _t=t=>r`<p class="order ${l.is_old&&l.plan?"old":""}">${t}</p>`;var b$=()=>x(Rt).length>0,y$=()=>x(we).length>0;function v$(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function k$(t){let e=t?x(Rt).flatMap((n,o)=>R$(t,o)??[]):[];return Zt({name:"decorate",title:"Decorate",drawing:t&&(()=>Qn("decorate",t)),result:e.length?e.map(n=>XR(t,n)):_t(x$(Rt,Vn)),about:[["run",Rt.at]],form:()=>r`${t?r`<div class="side">${Kn("decorate",t)}</div>`:u}
        <div class="weights">${t?x(Rt).map((n,o)=>YR(t,o)):u}</div>
        ${S$(Rt,Vn,l$)}`})}var x$=(t,e)=>`${x(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function YR(t,e){let n=R$(t,e);return n?tS(t,n,e):u}function T$(t){let e=t?.dust?.length?x(we).map((n,o)=>nS(t,o)):void 0;return Zt({name:"dust",title:"Dust",drawing:t&&(()=>Qn("dust",t)),result:e??_t(x$(we,Ga)),about:[["run",we.at]],form:()=>r`<div class="side">${t?Kn("dust",t):u}</div>
        <div class="weights">${t?x(we).map((n,o)=>oS(t,o)):u}</div>
        ${S$(we,Ga,t$)}`})}var R$=(t,e)=>v$(t.decorations,x(Rt),D("run",`/decorations/${e}/name`),e);function S$(t,e,n){return r`<div class="all-questions">
    ${x(t).map((o,i)=>r`<section class="questions" id=${W(t,i)} aria-labelledby="${W(t,i)}-title">
          <div class="part-head">
            <h3 id="${W(t,i)}-title">${e(i)}</h3>
            ${H(t,i,e(i))}
          </div>
          ${fe({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function ZR(t,e){return r`<h3>${t.name}</h3>
    ${M({key:`decorations.${e}.count`,label:"Bought, spares included",shown:[String(t.casts),""],of:`decorations.${e}.casts`})}`}function XR(t,e){if(e.bought)return _t(r`<b>${e.casts}</b> × ${e.name}, bought.`);let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=O(mt(l.units,Wt(e,"make_")));return _t(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${It(t.whole)?", for the whole run":""}.`)}function tS(t,e,n){return e.bought?ZR(e,n):r`<h3>${e.name} ${It(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${M({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:mt(l.units,Wt(e,"make_")),of:`decorations.${n}.make_g`})}
    ${M({key:`decorations.${n}.each`,label:"Each weighs",note:`${S(e.volume_each_ml,2)} ml`,shown:E(l.units,e.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${En(e.casting_s)} of casting.</p>`:u} ${eS(e,n)}`}function eS(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=a=>a===null?"not known":O(Tt(l.units,a)),s=a=>{let d=(o?.embeds??[]).map(a).filter(c=>c!==null);return d.length?O(Tt(l.units,Math.min(...d))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
    <dl class="facts">
      ${n?r`<div>
                <dt>Contact circle</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:u}
      ${o?r`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${s(a=>a.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(a=>a.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(a=>a.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(a=>a.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${S(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${_o(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function nS(t,e){let n=D$(t,e);if(!n)return u;let o=ht(t);return _t(r`<b>${O(mt(l.units,Wt(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var D$=(t,e)=>v$(t.dust,x(we),D("run",`/dust/${e}/name`),e);function oS(t,e){let n=D$(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=M({key:`set-up.dust.${e}`,label:n.name,note:ht(t),shown:mt(l.units,Wt(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function A$(t){let e=t?.cut;return Zt({name:"cut",title:"Cut",drawing:t&&(()=>Qn("cut",t)),result:e?iS(t,e):_t("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>r`${e?sS(t,e):u}
        <div class="all-questions">${gg()}</div>`})}var iS=(t,e)=>_t(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${O(E(l.units,t.piece.fresh_g))} on average, fresh.`);function sS(t,e){return r`<div class="side">${Kn("cut",t)}</div>
    <div class="weights">
      ${M({key:"cut.bar",label:"A bar on average, fresh",note:rS(e),shown:E(l.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${M({key:"cut.offcuts",label:"Offcuts",shown:E(l.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${aS(e)}
    </div>`}function rS(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${S(n,1)} to ${S(o,1)} g`}function aS(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function P$(t){return Zt({name:"label",title:"Label",drawing:uS,result:_t(lS(t)),about:[["run","/label"]],form:()=>r`<div class="more">${p$()} ${t?lc(t):u}</div>`})}function lS(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${O(E(l.units,e,0))}</b>, sold in the ${t.label.market}.`}var uS=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var be=()=>l.plan?.piece.cost?.materials.map(t=>t.name)??[],tt=t=>l.fats.find(e=>e.id===t)?.name??t,$c=8;function Ro({key:t,label:e,offers:n,among:o,taken:i,take:s}){let a=`find-${t}`,d=l.finding?.key===t?l.finding.text:"",c=(d.trim()?dS(d,o):n).filter(b=>!i(b)),p=b=>{h({finding:void 0}),s(b)},m=d.trim(),_=m!==""&&!i(m)&&!c.some(b=>Ht(tt(b))===Ht(m)),w=()=>{if(!m)return;let b=c.find(z=>Ht(tt(z))===Ht(m)||Ht(z)===Ht(m)),k=c.length===1?c[0]:void 0;(b??k??_)&&p(b??k??m)};return r`<div class="picker" role="group" aria-labelledby="${a}-label">
    <p class="question" id="${a}-label">${e}</p>
    <div class="field">
      <label for=${a}>Find it by its name</label>
      <input
        id=${a}
        .value=${d}
        @input=${b=>h({finding:{key:t,text:b.target.value}})}
        @keydown=${b=>{b.key==="Enter"&&w()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,$c).map(b=>r`<button type="button" @click=${()=>p(b)}>${tt(b)}</button>`)}
      ${_?r`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:u}
    </div>
    ${c.length>$c?r`<p class="hint">${c.length-$c} more: type a part of the name.</p>`:u}
  </div>`}function dS(t,e){let n=e?[]:be(),o=Ht(t).split(/\s+/).filter(Boolean),i=l.fats.filter(a=>hn(a,t)!==void 0).map(({id:a})=>a),s=a=>o.every(d=>Ht(tt(a)).includes(d));return[...new Set([...n.filter(a=>s(a)||i.includes(a)),...i])]}var vn=t=>f({...t,of:"studio"});function O$(){let t=(e,n,o)=>P({of:"studio",name:`ready ${e}`,pointers:[e],summary:r`<span>${n}<small>${dt("studio",e).join(", ")}</small></span>`,body:o});return r`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${t("/lye_solutions","Lye solutions",fS)} ${t("/blends","Melted blends of fats",_S)}
    </div>
  </section>`}var cS=["/prices","/packs","/have","/waste"],pS=t=>(e,n)=>cS.reduce((o,i)=>$(o,`${i}/${L(t)}`)===void 0?o:ps(o,i,t,n),e);function mS(t,e){let n=i=>i===t?e:Array.isArray(i)?i.map(s=>s===t?e:s):i&&typeof i=="object"&&i.name===t?{...i,name:e}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((s,a)=>{let d=$(s,a);return d===void 0?s:A(s,a,n(d))},i)}function M$({at:t,name:e,label:n,body:o}){let i=(a,d)=>Re([["studio",a],["run",mS(e,d)]]),s=`${t}/${L(e)}`;return r`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${wo("studio",t,e)}
    </div>
    ${C("studio",s)}
    <div class="row">${cs({of:"studio",at:t,name:e,label:n,also:pS(e),put:i})}</div>
    ${o}
    <div class="row">
      ${vn({label:"Made on",at:`${s}/made_on`,date:!0,optional:!0,short:!0})}
      ${vn({label:"Made by",at:`${s}/from`,optional:!0,short:!0})}
      ${vn({label:"Note",at:`${s}/note`,optional:!0})}
    </div>
  </div>`}var bi="/lye_solutions",fS=()=>r`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${dt("studio",bi).map(t=>M$({at:bi,name:t,label:"What you call it",body:hS(t)}))}
    ${si({of:"studio",at:bi,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:t=>Z("studio",`${bi}/${L(t)}/alkali`)})}`;function hS(t){let e=`${bi}/${L(t)}`,n=D("studio",`${e}/alkali`),o=n||"alkali",i=D("studio",`${e}/strength`);return r`${T({of:"studio",question:"Which alkali is dissolved in it?",at:`${e}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:s=>s,then:()=>`${e}/strength`})}
    <div class="row">
      ${vn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${e}/strength`,unit:"%"})}
      ${vn({label:"Coldest it stands",at:`${e}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${gS(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${vn({label:"as weak as",at:`${e}/strength_range/0`,unit:"%",short:!0})}
      ${vn({label:"or as strong as",at:`${e}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${C("studio",`${e}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${Ut({of:"studio",at:`${e}/made_from`,name:`what ${t} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>r`<div class="row">
            ${vn({label:`Purity of the dry ${o}`,at:`${e}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function gS(t,e){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(t)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${e} as water is 50 %.`;let i=s=>String(Math.round(s*100)/100);return`So ${i(o)} g of pure ${e} and ${i(100-o)} g of water in 100 g.`}var Ws="/blends",_S=()=>r`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${dt("studio",Ws).map(t=>M$({at:Ws,name:t,label:"What you call it",body:$S(t)}))}
    ${si({of:"studio",at:Ws,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:t=>U(`find-blend ${t}`)})}`;function $S(t){let e={of:"studio",at:`${Ws}/${L(t)}/fats`,stays:!0},n=x(e),o=i=>n.some(s=>s.fat===i);return r`${C("studio",e.at)}
  ${n.map((i,s)=>r`<div class="row" id=${W(e,s)}>
        ${vn({label:tt(String(i.fat)),at:`${e.at}/${s}/share`,unit:"%",short:!0})}
        ${H(e,s,tt(String(i.fat)))} ${C("studio",`${e.at}/${s}/fat`)}
      </div>`)}
  ${n.length?r`<p class="total" role="status">
          ${li("Its fats",n.map(i=>i.share))}
        </p>`:u}
  ${Ro({key:`blend ${t}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:wS(),among:"fats",taken:o,take:i=>j(e,{fat:i,share:""},tt(i))})}`}var wS=()=>[...new Set(["pour","pipe"].flatMap(t=>{let e=l.formulas[t]?.now.fats;return Array.isArray(e)?e.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],F$=t=>x({of:"studio",at:`${Ws}/${L(t)}/fats`}).map(({fat:e})=>String(e)),yi=t=>{let e=g("studio",`${bi}/${L(t)}`)??{},[n,o]=[e.alkali,e.strength].map(i=>String(i??""));return{alkali:n,words:[t,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var Bs=t=>`/${t}/lye_from`,Es=t=>`/${t}/blend`;function Is(t){let e=dt("studio","/lye_solutions").length>0||g("run",Bs(t))!==void 0,n=dt("studio","/blends").length>0||g("run",Es(t))!==void 0;if(!e&&!n)return u;let o=[...C$(t),L$(t)].filter(Boolean).join(", ");return P({name:`/${t} ready`,pointers:[Bs(t),Es(t)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>r`${e?yS(t):u} ${n?kS(t):u}`})}function C$(t){let e=g("run",Bs(t));return typeof e=="string"?[e]:X("run",Bs(t)).map(String)}var bS=t=>X(t,"/alkali").map(e=>String($(e,"/alkali")));function yS(t){let e=Bs(t),n=N("run",e),o=C$(t),i=bS(t),s=[...new Set([...dt("studio","/lye_solutions"),...o])],a=s.filter(m=>o.includes(m)||i.includes(yi(m).alkali)),d=s.filter(m=>!a.includes(m)),c=yt("run",e),p=m=>{let{alkali:_}=yi(m),w=o.includes(m),b=o.filter(Pt=>Pt!==m&&(w||yi(Pt).alkali!==_)),k=w?b:[...b,m],z=k.length>1?k:k[0];B("run",`${m}: ${w?"no":"yes"}`,e,z)};return r`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?Ce(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${a.map(m=>r`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${yi(m).words}
          </button>`)}
    </div>
    ${ft(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${d.length?r`<p class="hint">Of another alkali than this formula's: ${d.map(m=>yi(m).words).join(", ")}.</p>`:u}
  </div>`}var L$=t=>{let e=g("run",Es(t));return typeof e=="string"?e:D("run",`${Es(t)}/name`)};function vS(t,e){let n=X(t,"/fats").map(({fat:s})=>String(s)),o=new Set(n.flatMap(s=>{let a=l.fats.find(({id:d})=>d===s);return a?[a.id,a.name,a.inci,...a.also_called]:[s]})),i=new Set([...o].map(s=>s.toLowerCase()));return F$(e).every(s=>i.has(s.toLowerCase()))}var wc="\0singly";function kS(t){let e=Es(t),n=L$(t),o=[...new Set([...dt("studio","/blends"),...n?[n]:[]])],i=o.filter(d=>d===n||vS(t,d)),s=o.filter(d=>!i.includes(d)),a=g("run",`${e}/share`)!==void 0;return r`${T({question:"Blend of fats that is weighed",at:e,chosen:n||wc,answers:[[wc,"None: each fat by itself"],...i.map(d=>[d,d])],puts:d=>d===wc?void 0:d,hint:s.length?`With fats that this formula has not: ${s.join(", ")}.`:void 0})}
  ${n?a?r`<div class="row">
            ${f({label:`${n}: share of all fats of the formula`,at:`${e}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:r`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>B("run","Its share",e,{name:n,share:""},Z("run",`${e}/share`))}
            >
              Take a share of my own
            </button>`:u}`}var Yn="/pour/layers",Gn={at:Yn,in_order:!0},bc=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Za=()=>x(Gn);function xS(){let t=e=>Za().some(n=>e in n);return bc.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function B$(t){let e=Za(),n=xS();return e.length?r`<h3>
      Layers, lowest first ${t&&ht(t)?r`<small>${ht(t)}</small>`:u}
    </h3>
    ${T({question:"All of them by",at:Yn,is_told_elsewhere:!0,chosen:n,answers:bc,puts:o=>RS(o,t)})}
    <div class="items">${e.map((o,i)=>SS(o,i,n,t))}</div>
    ${Y(Gn,"One more layer on top",()=>j(Gn,{name:TS(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${Y(Gn,"Pour it in layers",()=>j(Gn,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function TS(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function E$(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function RS(t,e){let n=Za(),o=l.is_old?void 0:e,i=(s,a)=>{let d=E$(o,s,a);return t==="parts"||!d||t==="depth"&&"tilted"in s?"":t==="depth"?`${S(d.to_mm-d.from_mm,3)} mm`:`${S(d.mass_each_g,3)} g`};return n.map((s,a)=>{let d=Ya(a),c=t!=="parts"&&n.length>1&&a===n.length-1;return{...d,...c?{rest:!0}:{[t]:i(s,a)}}})}var Ya=t=>pt("run",`${Yn}/${t}`,[...bc.map(([e])=>e),"rest"]);function SS(t,e,n,o){let i=`${Yn}/${e}`,s=String(t.name)||`Layer ${e+1}`,a=E$(o,t,e);return r`<div class="part" id=${W(Gn,e)} role="group" aria-label="Layer ${s}">
    ${a&&o?DS(o,a,e):r`<p class="part-title">${s}</p>`} ${C("run",i)}
    ${PS(t,e,n,s)}
    ${o&&a?a.colours.map((d,c)=>AS(o,d,e,c)):u}
    ${P({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>r` ${f({label:"Name of the layer",at:`${i}/name`})} ${CS(i,s)} ${LS(i,e)}
        ${H(Gn,e,s)}`})}
  </div>`}function DS(t,e,n){return M({key:`pour.layer.${n}`,label:e.name,note:`${vu(Tt(l.units,e.to_mm-e.from_mm))} thick, ${vu(E(l.units,e.mass_each_g))} each`,shown:e.g_text===void 0?E(l.units,e.g):mt(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function AS(t,e,n,o){return M({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${S(e.teaspoons,1)} tsp`:"",shown:vo(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function PS(t,e,n,o){if(n==="parts")return OS(t,e,o);let i="rest"in t;return r`${i?u:f({label:`${o}, ${n}`,at:`${Yn}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?FS(e,n):MS(e,n)}
    >
      Takes the rest
    </button>`}function OS(t,e,n){let o=`${Yn}/${e}/parts`,i=s=>()=>{h({typed:void 0}),V("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${f({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function MS(t,e){let n=Za().map((o,i)=>i===t?{...Ya(i),rest:!0}:o.rest?{...Ya(i),[e]:""}:o);B("run","takes the rest",Yn,n)}function FS(t,e){let n=`${Yn}/${t}`;B("run","amount of the layer",n,{...Ya(t),[e]:""},Z("run",`${n}/${e}`))}function CS(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${x(n).map((o,i)=>{let s=`${n.at}/${i}`,a=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${W(n,i)} role="group" aria-label="${a} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${a}</p>
        ${H(n,i,a)}
      </div>
      ${C("run",s)}
      <div class="row">
        ${f({label:"Colour",at:`${s}/name`})}
        ${f({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${f({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${qn("run",s,a)}
    </div>`})}
  ${Y(n,"Add a colour",()=>j(n,{name:"",rate:""},"colour"))}`}var W$=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function LS(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===x(Gn).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:Ut({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${f({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${T({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:W$,puts:s=>s})}
        ${P({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!W$.some(([s])=>s===o),body:()=>f({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var Be=()=>$(l.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function yc(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=Be()==="depth"?n-o:o;h({typed:void 0}),V("run",`/pour/line/${Be()}`,`${S(i,2)} mm`)}function I$(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Ae($(l.run.now,`/pour/line/${Be()}`));return n===void 0?t.pour.below_brim_mm:Be()==="depth"?e-n:n}function WS(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=a=>e((a.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.removeEventListener(a,s)};n.addEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.addEventListener(a,s)}function BS(t){if(!l.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=I$(t),{share:o,h:i}=_$(t,e-n),s=c=>WS(c,p=>yc(t,n+p*i)),a=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),yc(t,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${S(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${O(Tt(l.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${a}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function ES(t){let{pour:e}=t,n=O(Tt(l.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=ht(t);return _t(r`${o}, <b>${O(E(l.units,e.mass_each_g))}</b> ${i}; make
      <b>${O(E(l.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var j$=()=>Be()==="depth"?"Depth":"Below brim";function q$(t){return Zt({name:"pour",title:"Pour",drawing:t&&(()=>Qn("pour",t)),result:t?ES(t):_t(`${IS()}.`),about:[["run","/pour"]],form:()=>r`${t?jS(t):qS()}
        <div class="more">
          ${Xa("pour")} ${Is("pour")} ${B$(t)} ${la("pour")}
        </div>`})}function IS(){let t=D("run",`/pour/line/${Be()}`);return t?`${t} ${Be()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function jS(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>yc(t,I$(t)+i);return r`<div class="side">
      ${Kn("pour",t,BS(t))} ${H$(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${f({label:j$(),at:`/pour/line/${Be()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${M({key:"pour.each",label:"Weigh into each",shown:E(l.units,e.mass_each_g),note:`${S(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${M({key:"pour.mm",label:"1 mm more or less",shown:St(l.units,e.ml_per_mm,2),note:`${Ve(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${M({key:"set-up.pour.make",label:"Base to make",note:ht(t),shown:E(l.units,e.make_g),of:`${n}.make_g`})}
      ${M({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var qS=()=>r`<div class="side">
    ${H$()} ${C("run","/pour/line")}
    ${f({label:j$(),at:`/pour/line/${Be()}`,unit:"mm"})}
  </div>`,Xa=t=>r`<button type="button" @click=${()=>Qt(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function H$(t){let e=n=>{if(n===Be())return;let o=t&&!l.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;B("run","pour line","/pour/line",{[n]:o===void 0?"":`${S(o,3)} mm`})};return at("The pour line is measured",Be(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var HS=[0,50,80,100];function N$(t){let e=t?.pipe;return Zt({name:"pipe",title:"Pipe",drawing:e&&(()=>Qn("pipe",t)),result:e?NS(t,e):_t("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?US(t,e):zS()})}function NS(t,e){let n=ht(t);return _t(r`Pipe <b>${S(e.volume_each_ml,0)} ml</b> on each, ${O(E(l.units,e.mass_each_g))} at this
      whipped density; make <b>${O(E(l.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function US(t,e){return r`<div class="side">
      ${Kn("pipe",t)}
      ${M({key:"pipe.each",label:"Topping on each",shown:St(l.units,e.volume_each_ml),note:`${S(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${M({key:"set-up.pipe.make",label:"Topping to make",note:ht(t),shown:E(l.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${M({key:"pipe.density",label:"Whipped density",note:`overrun ${S(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Xa("pipe")} ${Is("pipe")}
    </div>
    <div class="weights">${dd(e)} ${V$()} ${JS(t)} ${ZS(t)}</div>
    <div class="more">${ud(e)} ${ld()}</div>`}var js=t=>t===0?"pipe":`pipe.whipping${t}`,qs=(t,e)=>`${t.place}.pipe.whippings.${e}`;function U$(t,e){let n=Kr(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function zS(){return r`<div class="more">${ud()}</div>
    <div class="side">${V$()} ${g("run","/pipe/whip_now")===void 0?u:J$()}</div>
    <div class="weights">${dd()} ${Xa("pipe")} ${Is("pipe")}</div>
    <div class="more">${ld()}</div>`}var z$=t=>ht(t)?r`<small>${ht(t)}</small>`:u;function JS(t){return r`<h3>Today's bowl ${z$(t)}</h3>
    ${J$()} ${t.whippings.map((e,n)=>VS(t,e,n))}`}function VS(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${U$(t,e)}
  ${o==null?u:M({key:`${js(n)}.now`,label:"Enough for",note:s,shown:[K(o,"piece"),""],size:"weigh",of:`${qs(t,n)}.pieces_now`})}
  ${QS(t,e,n)}`}function J$(){let t=g("run","/pipe/whip/holds"),e=t===void 0?$s():{holds:t,net:""};return Ut({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:KS})}function KS(){return r`<div class="row">
    ${f({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${ws("/pipe/whip_now")}
  </div>`}function QS(t,e,n){return e.readings?.length?P({name:`${js(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>GS(t,e,n)}):u}function GS(t,e,n){return r`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${e.readings?.map(o=>r`<tr class=${o.planned?"planned":""}>
              <th scope="row">${S(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${S(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${_o(`${js(n)}.readings`,"Show the calculation",`${qs(t,n)}.readings`)}`}function V$(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(D("run",t))?.[1]?.replace(",",".")),n=Bt("run",t);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${In("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${HS.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>V("run",t,`${o} %`)}
          >
            ${YS(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${f({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function YS(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${R`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function ZS(t){let e=t.whippings.map(i=>({one:i,words:XS(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${z$(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${U$(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${_o("pipe.limits","How the limits come about",`${qs(t,0)}.limits`)}`}function XS({piping_s:t,lye_spoonfuls:e}){return[t?`${En(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${En(e.altogether_s)}`:""].filter(Boolean).join("; ")}function Q$(t){return Zt({name:"lye",title:"Lye",drawing:e1,result:t?K$(t).map(t1):_t("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${K$(t).map(n1)} ${i1(t)}</div>`:u}
        <div class="more">${u$()} ${d$(t)}</div>`})}function K$(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let a=Kr(t,i);return{slot:"pipe",title:`Lye for the topping${a&&`, ${a}`}`,batter:i,place:qs(t,s),pieces:e,key:js(s)}});return[n,...o]}function t1({title:t,batter:e,slot:n,pieces:o}){let i=Wn(n,o).length?" \u26A0":"";return _t(r`${t}: ${S(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${me(e.superfat_percent.effective)}${i}</b>.`)}var e1=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function n1({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:a}=n.superfat_percent,d=Wn(t,i).length>0,c=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${M({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${S(n.water_to_pure_alkali,2)} : 1 to alkali; water ${S(n.water_percent_of_fats,1)} % of the fats`,shown:[`${S(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${M({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${me(a)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${os(t,c,i)} ${G$(n.superfat_percent)} ${o1(n,o,s)}
    ${!p||g(t,"/superfat")===void 0?u:f({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:l.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function G$(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,a=`It lies between ${me(e)} and ${me(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${me(o)} and ${me(i)}.`,c=s[0],p=c?r` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return yu(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${a}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${a}${d} Some fat is left over even at the lowest.${p}</p>`}function o1(t,e,n){return t.heat?r`${Y$(t.heat)} ${_o(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function Y$(t){let e=i=>O(ih(l.units,i)),n=t.cooling.map(i=>`${i.shortest_min*60?En(i.shortest_min*60):"at once"} to ${En(i.longest_min*60)} in ${i.in}`),o=t.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at ${e(t.boils_at_c)}.`;return r`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function i1(t){let e=t.lye_pot;if(!e)return u;let{units:n}=l,o=(i,s,a,d,c="")=>M({key:`pot.${i}`,label:s,note:c,shown:a,size:"weigh",of:`${t.place}.lye_pot.${d}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${S(e.strength_percent,1)} %${ht(t)&&`; ${ht(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",mt(n,Wt(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,mt(n,Wt(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",mt(n,Wt(e,"lye_")),"lye_g",s1(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,mt(n,Wt(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${me(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,mt(n,Wt(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${os(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?G$(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${O(mt(l.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?Y$(e.heat):u}
  </div>`}function s1(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=Wt(t,"lye_"),i=mt(l.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${O(i)} with the pot: make up with water to that after cooling`}var Hs=new Map,r1=()=>Hs.clear(),a1=t=>typeof t?.owned=="number"?t.owned:void 0;function vc(t){let e=Kt(t,l.files?.moulds);return Hs.has(e)||(Hs.set(e,void 0),l1(e)),Hs.get(e)}async function l1(t){try{Hs.set(t,a1($t((await Ot(t)).text))),nt()}catch(e){if(!(e instanceof v))throw e}}async function Z$(t,e){let n=vc(t);n!==void 0&&(V("studio",e,n),q(`${n} kept in the studio`),await u1(Kt(t,l.files?.moulds)),ut())}async function u1(t){let e=await Ct(Vt,t);e.shipped||e.theirs||(xt(e,A(e.now,"/owned",void 0)),await He(e),r1())}function tl(t=!1){let e=(n,o,i,s=!1)=>f({of:"studio",label:o,at:`/work/${n}`,unit:i,optional:!0,takes_part:!0,is_due:s,short:!0});return[e("each_batch","Each batch","min",t),e("each_piece_made","Each piece made","s"),e("each_tray_fill","Each tray fill","min"),e("each_piece_packed","Each piece packed","s")]}var el=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],nl=t=>t[0].toUpperCase()+t.slice(1),ol=t=>f({...t,of:"studio"});function X$(){return!_n()&&l.run.file&&l.open.has("folded studio days")&&Aa("run"),r`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${P({of:"studio",name:"days",pointers:["/days",...We()?[]:["/work"]],summary:r`<span>When you work${r`<small>${d1()}</small>`}</span>`,body:c1})}
  </section>`}function d1(){let t=g("studio","/days/making")??{};return el.filter(e=>t[e]).map(e=>`${nl(e)} ${String(t[e])}`).join(", ")}var c1=()=>r`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${el.map(t=>ol({label:nl(t),at:`/days/making/${t}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${C("studio","/days")} ${C("studio","/days/making")} ${p1()} ${m1()} ${h1()}
    ${We()?r`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:r`<p class="question">How long the work takes you</p>
            <div class="row">${tl(g("studio","/days")!==void 0)}</div>
            ${C("studio","/work")}`}`;function p1(){let t="/days/small_jobs",e=N("studio",t),n=X("studio",t),o=a=>{let d=el.filter(p=>p===a!==n.includes(p)),c=p=>$n(A(p,t,d.length?[...d]:void 0),"/days");ie("studio",`${nl(a)}: ${n.includes(a)?"no":"yes"}`,c)},i=Bt("studio",t),s=el.filter(a=>n.includes(a)||!D("studio",`/days/making/${a}`));return r`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${e}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${e} tabindex="-1" aria-labelledby="${e}-label">
      ${s.map(a=>r`<button type="button" aria-pressed=${n.includes(a)?"true":"false"} @click=${()=>o(a)}>
            ${nl(a)}
          </button>`)}
    </div>
    ${ft(e,i,"Without any, these wait for a making day.")}
  </div>`}var Ns={of:"studio",at:"/days/off",and:t=>$n(t,"/days")};function m1(){return r`<p class="question">Days off and holidays</p>
    ${x(Ns).map((t,e)=>f1(String(t),e))}
    ${Y(Ns,"Add a day off",()=>j(Ns,"","A day off"))}`}function f1(t,e){let n=`/days/off/${e}`,[o,i=""]=t.split("/"),s=N("studio",n),a=yt("studio",n),d=(m,_)=>V("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,w,b)=>r`<div class="field short ${a?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${F(w)}
        @input=${k=>b(k.target.value)}
        @blur=${rs}
        aria-invalid=${a?"true":"false"}
        aria-describedby=${a?`${s}-said`:u}
      />
      ${m===s?ft(s,a):u}
    </div>`,p=o?`off on ${bt(o)}`:`day off ${e+1}`;return r`<div class="row" id=${W(Ns,e)} role="group" aria-label=${p}>
    ${c(s,"First day off",o,m=>d(m,i))}
    ${c(`${s}-last`,"Last, if there are several",i,m=>d(o,m))} ${H(Ns,e,p)}
  </div>`}function h1(){let t=(e,n,o)=>ol({label:n,at:`/days/${e}`,count:!0,optional:!0,short:!0,hint:o});return r`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${t("pots_owned","Pots for the base")} ${t("bowls_owned","Bowls for the topping")}
      ${t("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${t("rack_places","Pieces that can cure at once")}
      ${ol({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${g1()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?r`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var g1=()=>Ut({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let t=(e,n,o,i={})=>ol({label:n,at:`/days/one_lye_a_day/${e}`,unit:o,short:!0,...i});return r`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${t("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${t("saves","Each further batch takes less by","min")}
          ${t("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var _1={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},tw=t=>({run:t,studio:t}),kc=t=>tw(`/losses/${t}`);function xc(t,e){return _1[t].map(({name:n,label:o,unit:i,optional:s})=>At(tw(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var Tc={holds:"",paid:""},il=t=>({of:"studio",at:`/packs/${L(t)}`,in_order:!0,and:(e,n)=>n?e:ii($n(e,"/packs"),[`/serves_as/${L(t)}`])});function nw(t){let e=l.fats.find(n=>n.id===t||n.name===t);return e?[e.id,e.name,e.inci,...e.also_called]:[t]}function ow(t,e){let n=new Set(nw(e).map(o=>o.toLowerCase()));return dt("studio",t).find(o=>n.has(o.toLowerCase()))}var So=t=>ow("/packs",t),iw=t=>be().includes(t)||l.fats.some(e=>e.id===t)?"g":void 0,sw="money packs";function rw(t){return r`${dt("studio","/packs").map(e=>$1(e,t))}
  ${Ro({key:"pack",label:"Which material comes in packs?",offers:be(),taken:e=>So(e)!==void 0,take:sl})}`}function $1(t,e){let n=il(t),o=tt(t);return r`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${x(n).map((i,s)=>b1(n,s,o,iw(t),e))}
    <div class="row">
      ${Y(n,r`Another pack of ${o}`,()=>j(n,Tc,`A pack of ${o}`))}
      ${f({of:"studio",label:"Lost beside the batch",at:`/waste/${L(t)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${w1(t)}
    </div>
  </div>`}var ew=t=>`/serves_as/${L(t)}`;function w1(t){let e=ew(t),n=D("studio",e),o=new Set(nw(t)),i=[...new Set([...be(),...dt("studio","/packs")])].filter(a=>!o.has(a)&&g("studio",ew(a))===void 0),s=a=>d=>$n(A(d,e,a||void 0),"/serves_as");return!n&&(be().some(a=>o.has(a))||!i.length)?u:gt({label:"Another make of",of:"studio",at:e,answers:i.map(a=>[a,tt(a)]),unsaid:"nothing: a material of its own",optional:!0,take:a=>ie("studio",`${tt(t)}: ${a?tt(a):"a material of its own"}`,s(a))})}function b1(t,e,n,o,i){let s=`${t.at}/${e}`,a=(c,p,m={})=>f({of:"studio",label:p,at:`${s}/${c}`,short:!0,...m}),d=g("studio",`${s}/density`)!==void 0||Bt("studio",`${s}/holds`);return r`<div class="row" id=${W(t,e)} role="group" aria-label="Pack ${e+1} of ${n}">
    ${a("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${a("paid","Paid for it",{told:i})} ${y1(s)}
    ${a("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?a("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${H(t,e,`pack ${e+1} of ${n}`)}
  </div>`}function y1(t){let e=`${t}/from`,n=dt("studio","/sellers");return n.length?gt({label:"From",of:"studio",at:e,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):f({of:"studio",label:"From",at:e,optional:!0,short:!0})}function sl(t){let e=`/packs/${L(t)}`,[n,o]=[`/prices/${L(t)}`,`/money/prices/${L(t)}`],i=fi().length?g("run",o):void 0,s=[i,g("studio",n)].flatMap(k1),a=s.length?[...s,Tc]:[Tc];Re([["studio",c=>v1(A(ii(c,[n]),e,a))],...i!==void 0?[["run",c=>ii(c,[o])]]:[]]),q(s.length?`The price of ${tt(t)} is its first pack now`:`${tt(t)} added`),Et("studio",sw),G(Oe(W(il(t),a.length-1)))}var v1=t=>$(t,"/currency")?t:A(t,"/currency",Ma());function k1(t){let e=$(t,"/paid");if(!e)return[];let n=$(t,"/confirmed");return[{holds:$(t,"/for")??"",paid:e,...n===void 0?{}:{confirmed:n}}]}var aw=t=>r`<button
    type="button"
    aria-label="Another pack size of ${tt(t)}"
    @click=${()=>sl(t)}
  >
    Another pack size
  </button>`;function lw(t){let e=So(t),n=X("studio",il(e).at).length,o=()=>{Et("studio",sw),G(Oe(W(il(e),0)))};return r`<div class="row">
    <p>${tt(t)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${tt(t)}" @click=${o}>To its packs</button>
  </div>`}function uw(){let t=e=>`/have/${L(e)}`;return r`${dt("studio","/have").map(e=>{let n=iw(e),o=n?void 0:"Such as 12 pieces, or 1 kg";return r`<div class="row">
      ${f({of:"studio",label:tt(e),at:t(e),unit:n,hint:o,short:!0})}
      ${wo("studio","/have",e,tt(e))}
    </div>`})}
  ${Ro({key:"have",label:"Which material stands on the shelf?",offers:be(),taken:e=>ow("/have",e)!==void 0,take:e=>B("studio",`${tt(e)} added`,t(e),"",Z("studio",t(e)))})}`}var dw=({key:t})=>`money ${t}`;function mw(){if(!We())return u;let t=T1(Ma());return!_n()&&t.some(e=>l.open.has(`folded studio ${dw(e)}`))&&xa(),r`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${x1()}
    <div class="folds">
      ${t.map(e=>P({of:"studio",name:dw(e),pointers:e.pointers,summary:r`<span>${e.title}${e.told?r`<small>${e.told}</small>`:u}</span>`,body:e.body}))}
    </div>
  </section>`}var x1=()=>g("run","/money/currency")===void 0?u:r`<div class="row">
        ${Do({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,Do=t=>f({...t,of:"studio"}),rl=t=>dt("studio",t).map(tt).join(", "),fw=t=>["/work",t].join("/");function T1(t){let e=(i,s,a={})=>Do({label:s,at:i,told:t,short:!0,...a}),n=(i,s)=>e(i,s,{optional:!0,takes_part:!0}),o=(i,s="")=>{let a=D("studio",i);return a&&`${a}${s}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:rl("/packs"),body:()=>rw(t)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:rl("/sellers"),body:()=>S1(e)},{key:"have",title:"On the shelf",pointers:["/have"],told:rl("/have"),body:uw},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:x(vi).map(i=>tt(String($(i,"/material")))).join(", "),body:A1},{key:"work",title:"Work",pointers:["/work"],told:o(fw("paid_an_hour"),` ${t} an hour`),body:()=>O1(e)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${t} each batch`),body:()=>r`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:M1},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>r`<div class="row">
          ${Do({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:rl("/asking"),body:()=>F1(e)}]}var R1=t=>(e,n)=>Object.entries(e.packs??{}).reduce((o,[i,s])=>s.reduce((a,{from:d},c)=>d===t?A(a,`/packs/${L(i)}/${c}/from`,n):a,o),e);function S1(t){let e=(n,o)=>`/sellers/${L(n)}/${o}`;return r`${dt("studio","/sellers").map(n=>r`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${wo("studio","/sellers",n)}
        </div>
        <div class="row">
          ${cs({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:R1(n)})}
          ${t(e(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${t(e(n,"postage_free_from"),"Free from",{optional:!0})}
          ${Do({label:"From ordering to having it",at:e(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${si({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>Z("studio",e(n,"postage"))})}`}var vi={of:"studio",at:"/packaging"},D1=t=>!be().includes(t)&&!l.fats.some(e=>e.id===t);function A1(){let t=e=>x(vi).some(n=>$(n,"/material")===e);return r`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${x(vi).map((e,n)=>P1(String($(e,"/material")??""),n))}
    ${Ro({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(e=>dt("studio",e)).filter(D1),taken:t,take:e=>j(vi,{material:e,each_piece:""},e)})}`}function P1(t,e){let n=So(t)!==void 0||g("studio",`/prices/${L(t)}`)!==void 0;return r`<div class="row" id=${W(vi,e)}>
    ${Do({label:`${tt(t)}, each piece`,at:`/packaging/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:r`<button type="button" aria-label="Say its price: ${t}" @click=${()=>sl(t)}>
            Say its price
          </button>`}
    ${H(vi,e,t)}
  </div>`}function O1(t){let e=g("studio","/work")!==void 0;return r`<div class="row">
      ${t(fw("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:e})} ${tl()}
    </div>
    ${C("studio","/work")}`}var cw=(t,e)=>T({of:"studio",question:t,at:`/tax/${e}`,chosen:D("studio",`/tax/${e}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),M1=()=>r`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${Ut({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>r`<div class="row">${Do({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${cw("The prices you pay are","prices_paid")} ${cw("The prices you ask are","prices_asked")}`})}`,pw=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function F1(t){let e=n=>`/asking/${L(n)}`;return r`${dt("studio","/asking").map(n=>C1(n,e(n),t))}
  ${si({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>Z("studio",e(n))})}
  ${L1(t)}`}function C1(t,e,n){let o=g("studio",e)??{},i=pw.map(([a])=>a).find(a=>o[a]!==void 0),s=a=>Do({label:a,at:`${e}/${i}`,unit:"%",short:!0});return r`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${wo("studio","/asking",t)}
    </div>
    <div class="row">${cs({of:"studio",at:"/asking",name:t,label:"What you call it"})}</div>
    ${T({of:"studio",question:"Its price comes by",at:e,chosen:i,answers:pw,puts:a=>({[a]:""}),then:a=>`${e}/${a}`})}
    ${i?r`<div class="row">
            ${i==="price"?n(`${e}/price`,"Price of a piece"):s(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var Us={of:"studio",at:"/price_endings"},L1=t=>r`<p class="question">A price ends in</p>
    ${x(Us).map((e,n)=>r`<div class="row" id=${W(Us,n)}>
          ${t(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${H(Us,n,`ending ${n+1}`)}
        </div>`)}
    ${Y(Us,"Add an ending",()=>j(Us,"","An ending"))}`;var W1=t=>it()&&So(t)===void 0&&fi().length>0;function hw(){if(!We())return r`<button type="button" @click=${B1}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${L(e)}/${n}`;return{run:Oa.run+o,studio:Oa.studio+o}};return r`<div class="row">
      ${At(rn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${be().map(e=>So(e)===void 0||g("run",t(e,"paid").run)!==void 0?r`<div class="row">
              ${At(t(e,"paid"),{label:`${tt(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${At(t(e,"for"),{label:`for how much ${tt(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${W1(e)&&Ye(t(e,"paid"))?aw(e):u}
            </div>`:lw(e))}
    </div>
    ${be().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function B1(){let t=it()?"studio":"run",e=t==="studio"?rn.studio:rn.run;B(t,"Prices added",e,"",Z(t,e))}var ki=t=>({run:t,studio:t}),Rc=t=>({run:`/pipe/${t}`,studio:`/${t}`}),E1=ki("/scales"),gw=ki("/spoilage"),I1=ki("/pots");function Sc(t){return Zt({name:"studio",title:"My studio",result:_t(j1()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>q1(t)})}function j1(){let t=l.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function q1(t){let e=H1(t),n=[...e.flatMap(o=>o.all),...Yt()?[ua]:[]];return r`${it()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Mu(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${e.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${jn(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>
    ${it()?r`${mw()} ${O$()} ${X$()}`:u}`}function H1(t){let e=se(),n=[{title:"Scales",all:[E1],body:N1},{title:"Losses",all:[kc("pour"),...e?[kc("pipe")]:[]],body:()=>U1(e,t)},{title:"Rejects",all:[gw],body:J1},{title:"Pot and lye jug",all:[I1],body:V1},{title:"Moulds owned",all:_w().map(({shared:o})=>o),body:Q1},{title:"Prices paid",all:fi(),body:hw}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Rc),body:K1},{title:"Weigh-cups",all:[],body:cg}),it()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[wi],body:hc}),n}function N1(){let t=(e,n)=>r`${At(ki(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${At(ki(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function U1(t,e){return r`<div class="row">
      ${xc("pour",t?"Base":void 0)} ${t?xc("pipe","Topping"):u}
    </div>
    ${e?z1(e):u}`}function z1({pour:t,pipe:e,...n}){let o=ht({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:a,lost_g:d})=>`${s}: ${O(E(l.units,a))} in the pieces, ${O(E(l.units,d))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var J1=()=>At(gw,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function V1(){let t=(e,n,o)=>At(ki(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function K1(){let t=(n,o,i,s=!1)=>At(Rc(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>Ye(Rc(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function _w(){return["/pour",...x(Rt).map((e,n)=>$i(n))].flatMap(e=>{let n=D("run",`${e}/mould`);return n?[{mould:n,shared:{run:Y_(e),studio:`/moulds_owned/${L(Fu(n))}`}}]:[]})}function Q1(){return r`<div class="row">
    ${_w().map(({mould:t,shared:e})=>{let n=l.files?.moulds.find(s=>s.file===t)?.name??t,o=Ye(e)===void 0?vc(t):void 0,i=()=>{Z$(t,`/moulds_owned/${L(Fu(t))}`)};return r`${At(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&it()?r`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Dc(t){let e=t&&ri(t);return r`${Y1(t)}
    <div class="set-up">${$w(e)} ${G1()} ${Sc(e)}</div>`}function $w(t){return r`${q$(t)} ${se()?N$(t):u}
  ${b$()?k$(t):u} ${y$()?T$(t):u}
  ${Yt()?A$(t):u} ${Q$(t)} ${fc()?P$(t?.whole):u}`}function G1(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${se()?u:r`<button type="button" @click=${pg}>Add a topping</button>${mg()}`}
      ${a$()} ${hg()}
      ${fc()?u:r`<button type="button" @click=${c$}>Draft the label</button>`}
    </div>
  </section>`}function ww(t=u){return r`<div class="row">
    ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${oi("Mould","/pour/mould",l.files?.moulds)}
    ${oi("Base","/pour/formula",l.files?.formulas)}
    ${se()?oi("Topping","/pipe/formula",l.files?.formulas):u} ${t}
  </div>`}function Y1(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof l.run.now.note=="string"?r`<p class="aside">${l.run.now.note}</p>`:u}
    ${ww(t?Z1(t):u)}
    <div class="batches">${t?m$(t):u} ${pc()}</div>
  </section>`}function Z1(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:a}=t.pieces,d=It(t)?`${a} batches, ${K(o,"filling")}`:Qr(o,i);return M({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function X1(){let e=(l.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>l.formulas[n]).filter(tD);return[fe({part:"Run"},()=>[ww(),pc()]),...e.map(n=>fe({part:String(l.formulas[n].now.name||"Formula")},()=>Yg(n))),$w(),Sc()]}var tD=(t,e,n)=>n.findIndex(o=>l.formulas[o]===l.formulas[t])===e;ph(X1);var eD={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function bw(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(a=>r`<li class=${a.severity}><strong>${eD[a.severity]??a.severity}</strong> ${a.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function yw(t,e){let n=t?.batches.findIndex(({numbers:a})=>a.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:a})=>a!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function xi(t){let e=qo(t);return e?.finished_at?"done":e||Ho(t)?"under way":"not begun"}var nD=()=>Math.max(l.plan?.pieces.batches??0,...l.bench.batches.map(({batch:t})=>t));function oD(t){let{chosen:e}=l.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>xi(s)===i);return o("under way")??o("not begun")??1}function Ac(){let t=nD(),e=oD(t),n=qo(e),o=yw(l.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?yw(n.plan,e):o}}var kn=({kept:t})=>!t&&l.is_old,Ti=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var iD=6,sD={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function kw({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${xi(i)}`;return e>iD?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>vw(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:at("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${sD[xi(i)]}</span> ${i}<small>
          ${xi(i)}</small
        >`]),i=>vw(Number(i)))}function vw(t){Lm(t),q(`Batch ${t}, ${xi(t)}`)}var al="";function xw(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return rD(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(a=>a.rows).filter(({key:a})=>!fo(n,a).is_done).length,s=()=>i?Tw(e.id):void Yl(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Sw(e.begun_at)}; its weights stay as they were then.</p>
    ${al===e.id?Rw(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Yl(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${Ho(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function rD({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Sw(n)}.</p>
    ${al===o?Rw("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Ni(e)}):r`<button type="button" @click=${()=>Tw(o)}>Start this batch anew</button>`}
  </div>`}function Tw(t){al=t,nt(),G(U("batch-stays"))}function Rw(t,e,n){let o=()=>{al="",nt(),G(U("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var aD=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Sw=t=>aD.format(new Date(t));var lD={pour:"Base",pipe:"Topping"},Dw=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function Aw(t,e){let[n,o]=[Dw(t),Dw(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,a=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${lD[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${a(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${a(p)}, now ${p.row.shown}`);return[...d,...c]}var Pc=3,Oc=new Map,Mc="";function uD(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=l;if(s&&!Nc(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:Q(s)};if(!o){if(!l.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let a=Aw(n.vessels,o.vessels),d=new Set(Ti(n).map(({text:p})=>p)),c=Ti(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return a.length||c.length?{told:a,dangers:c,mark:o.mark}:void 0}function Pw(t){let e=uD(t),{kept:n}=t;if(!e||!n)return u;if(Oc.get(n.id)===e.mark)return pD(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${dD(e)}
    </p>
    ${cD(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${De}</strong> As it is now: ${i}</p>`)}
    ${Mc===n.id?hD(t):mD(t,e)}
  </div>`}function dD({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-Pc;return r`${t.slice(0,Pc).join("; ")}${n>0?` and ${n} more.`:"."}`}var cD=({told:t})=>t.length>Pc?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function pD(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Oc.delete(t),nt())}>What has changed</button>
  </div>`}function mD(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{Oc.set(o,e),nt(),G(U("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>fD(t)}>Start this batch anew</button>`:u}
  </div>`}function fD(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void Ni(t.number);Mc=o,nt(),G(U("keep-weighing"))}function hD(t){let e=Object.keys(t.kept.ticks).length,n=()=>{Mc="",nt(),G(U("run-title"))},o=()=>{n(),Ni(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Ow=({text:t})=>r`<p class="danger"><strong>${De}</strong> ${t}</p>`;function Mw(t){let e=new Set(l.dangers.run.map(({text:o})=>o)),n=Ti(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(Ow)}</div>`:u}var gD=({vessel:t})=>["lye","lye_pot","share"].includes(t),_D=({batter:t},e)=>!t||!e.batter||t===e.batter;function Fw(t,e){if(!gD(e))return u;let n=Ti(t).filter(o=>_D(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${Ow(o)} ${$D(o)}`)}</div>`:u}function $D({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${bD}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>wD(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function wD(t){Qt(t),requestAnimationFrame(()=>G(Z(t,"/superfat")))}function bD(){h({view:"watch"}),G(U("watch-title"))}var Fc=(t,e)=>r`<p class="do ${kn(t)?"old":""}">${e}</p>`;function Cw(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${O(Tt(l.units,o))} below the brim`;return Fc(t,r`${s}, <b>${O(E(l.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Lw(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Fc(t,r`Whip until the level weigh-cup holds <b>${O(E(l.units,n.net_g))}</b>.`):u}function Ww(t,{batch:e}){let{pipe:n}=e;return n?Fc(t,r`Pipe <b>${S(n.volume_each_ml,0)} ml</b> on each, ${O(E(l.units,n.mass_each_g))} at the
      planned whipped density.`):u}function Bw(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[Ke(n)===o?n:e,""]}function Ew(t,e,n){if(e.vessel==="share"&&!t.batch.lye_pot&&n.role==="lye_solution")return vD(t,e,n);let o=yD(t,e,n);return o===void 0?void 0:{place:o}}function yD({batch:t,plan:e,place:n,vessels:o},i,s){switch(i.vessel){case"fats":case"lye":case"batter":return jw(i,s,t,n);case"layers":return xD(s,t.pour.layers??[],`${n}.pour.layers`);case"dust":return Cc(s.name,t.dust,`${n}.dust`);case"lye_pot":return s.role==="water"||s.role==="ice"?`${n}.lye_pot.water_g`:Cc(s.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let a=o.filter(d=>d.vessel==="melt");return a.length===e.decorations.length?`decorations.${a.indexOf(i)}.make_g`:void 0}case"share":return kD(i,s,t,n)}}function vD({vessels:t},e,n){let o=t.find(s=>s.vessel==="lye"&&s.key===e.key.replace(/\.share$/,".lye"));return o?{working:{of:e.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:s,shown:a})=>({name:s,value:a,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var Iw=({key:t})=>Number(/^pipe\.(\d+)\./.exec(t)?.[1]??1)-1;function kD(t,e,n,o){let i=(n.pipe?.whippings??[]).slice(0,Iw(t)),s=t.batter==="pipe"?i.reduce((a,{count:d})=>a+d,1):0;return e.role==="lye_solution"?`${o}.lye_pot.shares.${s}.lye_g`:e.role==="water"?`${o}.lye_pot.shares.${s}.top_up_g`:jw(t,e,n,o,"lye")}function Cc(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function jw(t,e,n,o,i=t.vessel){let s=Iw(t),[a,d]=t.batter==="pipe"?[n.pipe?.whippings[s],`${o}.pipe.whippings.${s}`]:[n.pour,`${o}.pour`],c=(a?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===e.name||e.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function xD(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:Cc(t.name,e[o].colours,`${n}.${o}.colours`)}function Lc(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>fo(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${qw(n)}>
    <div class="vessel-head">
      <h3 id=${qw(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${Fw(e,n)}
    ${Zr(n.rows,({key:s})=>s,s=>TD(t,e,n,s))}
  </section>`}var qw=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function TD(t,e,n,o){let{is_done:i,is_waiting:s}=fo(t.number,o.key),[a,d]=Bw(l.units,o),c=kn(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${F(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>RD(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${a}</b>${d?r` <i>${d}</i>`:u}</span>
    </label>
    ${SD(t,e,n,o)}
  </div>`}function RD(t,{mark:e},n,o){if(!kn(t))return Mm(t.number,e,n.key,o.checked);o.checked=!o.checked,q("Not ticked: what is struck through is not to be weighed.")}function SD(t,e,n,o){let{planned:i}=t,s=i?.mark===e.mark?i.vessels.find(({key:m})=>m===n.key):void 0,a=i&&s&&Ew(i,s,o);if(!a)return u;let d=`weigh.${t.number}.${o.key}`,c=l.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>qt("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?r`<div class="sum" id=${p}>${"place"in a?Ru(a.place):qr(a.working)}</div>`:u}`}function Wc(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function Hw(t,e){let{planned:n,whip_today:o}=l;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||DD(t,e),o?.batch===t&&o.reading===e?o:void 0)}var Bc=!1;async function DD(t,e){let{planned:n}=l;if(Bc||!n)return;Bc=!0;let o={of:n,batch:t,reading:e},i={holds:$(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await Vs({...n,run:A(n.run,"/pipe/whip_now",i)});h({whip_today:{...o,...AD(s,t)}})}catch(s){if(!(s instanceof v))throw s;h({whip_today:{...o,complaint:Q(s.complaint)}})}finally{Bc=!1}}function AD(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var Ic,Ec,PD=t=>Ic??(Ke(t)==="oz"||!t&&l.units==="us"?"oz":"g");function Nw(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(a=>a.readings.length))return u;let o=Ql(t.number),i=PD(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${gn("weigh_cup")}</div>
    ${Pe("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${F(Ec??o)}
        ?disabled=${s}
        @input=${a=>Ec=a.target.value}
        @change=${a=>MD(t,e,a.target.value,i)}
      />
      ${at("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],OD)}
    </div>
    ${FD(t,e,n,o)} ${LD(e,n)}
  </div>`}function OD(t){Ic=t,nt()}function MD(t,{mark:e},n,o){Ec=void 0;let i=Qe(n)?`${n.trim()} ${o}`:n.trim();if(Ic=void 0,i===Ql(t.number))return nt();if(kn(t))return q("Not taken: the weights are not those of what is typed."),nt();Fm(t.number,e,i)}function FD(t,e,n,o){if(!o)return u;let i=Hw(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,a)=>r`<p>${CD(s,i.pieces?.[a]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function CD({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${K(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function LD(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${e.map(o=>r`<table class="readings">
          <caption>
            A bowl for ${o.pieces}
          </caption>
          <thead>
            <tr>
              <th scope="col">net</th>
              <th scope="col">overrun</th>
              <th scope="col">pipes, ${n}</th>
            </tr>
          </thead>
          <tbody>
            ${o.readings.map(i=>r`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${O(E(l.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${S(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var zs="pour",Uw=()=>Ac().kept!==void 0;function zw(){gr();let t=Ac(),e=l.bench.version!==void 0||l.bench.failed!==void 0;return r`<section class="weighing" data-part=${zs} aria-labelledby="run-title">
    ${WD(t)} ${ED(t)}
    ${t.weights&&e?r`${Mw(t.weights)} ${Pw(t)} ${ID(t,t.weights)}`:u}
    ${xw(t)}
  </section>`}function WD(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(l.run.now.name??"")}</h1>
    ${e?r`<p class="which">${BD(t,e)}</p>`:u}
    <div class="row">
      ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${kw(t)}
    </div>
  </div>`}function BD(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),s=i.filter(({key:d})=>fo(t.number,d).is_done).length,a=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${a}${en(e,n)}</b>, ${s} of ${i.length} weighed`}function ED({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:a}=l.bench,d=o!==void 0&&Ho(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Wm}>I have looked</button>`:u}
    ${d?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(c=>r`<p class="alarm">${c}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${l.complaint?"No weights before this is corrected.":a===void 0?"Reading ...":""}
          </p>`}
  </div>`}function ID(t,e){let{vessels:n}=e,o=p=>n.filter(m=>m.batter===p),i=o(),s=i.filter(p=>p.day_before),a=i.filter(p=>!p.day_before),d=o("pipe").length>0,c=p=>p.map(m=>Lc(t,e,m));return r`${zD(d,i)}
    <div class="batters ${d?"two":""}">
      ${ll("ahead","To have ready",c(s))}
      ${ll("base",d?"Base":"Batter",jD(t,e,o("pour"),s))}
      ${d?ll("topping","Topping",[...c(o("pipe")),ND(t,e),Wc(o("pipe"),HD(t,e))]):u}
      ${ll("after","At the end",c(a))}
    </div>`}var ll=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function jD(t,e,n,o){let i=({vessel:a})=>a==="layers",s=a=>a.map(d=>Lc(t,e,d));return[...s(n.filter(a=>!i(a))),Cw(t,e),...s(n.filter(i)),Wc([...o,...n],qD(t,e))]}var Jw=(t,e,n=u)=>r`<p class=${kn(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>me(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,qD=(t,{batch:e})=>Jw(t,[e.pour],In("superfat_as_weighed")),HD=(t,{batch:e})=>Jw(t,e.pipe?.whippings??[]),ND=(t,e)=>r`${Lw(t,e)} ${Nw(t,e)} ${Ww(t,e)}`,UD={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function zD(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>UD[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===zs)||(zs="pour"),r`<div class="narrow">${at("What is shown",zs,o,JD)}</div>`)}function JD(t){zs=t,nt(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Vw=()=>r`${pi(Uw()?"No new weights can be given.":void 0)} ${zw()}`;var VD={"set-up":Dc,watch:bw,money:N_,days:j_,mould:V_,print:G_};function Kw(t){let e=r`${cr().map(o=>Xe(o))} ${dr().map(tn)}`;if(t==="weigh")return r`${e} ${Vw()}`;let{plan:n}=l;return r`${e} ${pi()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(l.run.now.name??"")}</h1>
    ${n?VD[t](n):KD(t)}`}function KD(t){return l.complaint?t==="set-up"?Dc():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var QD=()=>{h({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Gw(){let t=l.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${QD}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=da(t.sell),s=e.trim()&&n&&o&&i,a=()=>{lt(async()=>{await Pr({name:e.trim(),mould:n,formula:o,sell:i}),h({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${F(e)}
          @input=${d=>y(t,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${Qw(t,"mould","Mould",GD())} ${Qw(t,"formula","Base",YD())}
      ${ca("new-run-sell",t.sell,d=>y(t,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${a}>Make the run</button>
      <button type="button" @click=${()=>h({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var GD=()=>[...(l.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...l.catalogue.map(t=>[t.path,t.name])],YD=()=>(l.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function Qw(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${a=>y(t,{[e]:a.target.value})}>
      <option value="" .selected=${F(t[e]==="")}>choose ...</option>
      ${o.map(([a,d])=>r`<option value=${a} .selected=${F(a===t[e])}>${d}</option>`)}
    </select>
  </div>`}var ZD=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function Zw(){let t=l.files?.runs??[],e=t.filter(o=>!o.shipped).sort(ZD),n=t.filter(o=>o.shipped);return r`${_e("Runs")} ${Gw()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?Le(e,Yw):r`<p class="aside">No runs of your own in ${l.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Le(n,Yw)}
    </section>
    ${$e("run")}`}function Yw(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,a=[e===void 0?"":K(e,"piece"),n??"",o?`due ${bt(o)}`:"",i?`made ${bt(i)}`:s?`changed ${bt(s)}`:""].filter(Boolean);return nn({kind:io,one:t,facts:a,picture:XD(n),open:()=>ze(t.file)})}var XD=t=>l.files?.moulds.find(e=>e.name===t)?.file??l.catalogue.find(e=>e.name===t)?.path;function Xw(){let t=Fn();return r`${_e("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${Xr(Sn,"Each file is named by the studio, or by the runs that use its tips.",e=>Ji(Sn,e))}
      ${t?Oh(t):u}
      ${ta({label:"A new tip of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(Ch(e)):xr(Sn,Uu(e)),tried:lt})}
    </section>
    <section aria-labelledby="built-in-tips">
      <h2 id="built-in-tips">Built-in tips</h2>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Tip</th>
            <th scope="col">Opening</th>
            <th scope="col">Area, mm²</th>
          </tr>
        </thead>
        <tbody>
          ${Xi().map(({name:e,opening:n,area_mm2:o})=>r`<tr>
                <th scope="row">${e}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":S(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${$e("tips")}`}var nb=document.getElementById("page");function ob(){let{view:t,fault:e}=l;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${E_()} ${Vf()}
    <main
      id="main"
      tabindex="-1"
      data-view=${t}
      class=${l.is_old&&!ue(t)&&t!=="order"?"old-now":""}
    >
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${eA()}
    </main>
    <p class="unseen" role="status">${l.announcement}</p>`}var tA={runs:Zw,orders:O_,formulas:Xg,moulds:t_,fats:Nh,tips:Xw};function eA(){let{view:t,fault:e}=l;return an(t)?Kw(t):ue(t)?tA[t]():t==="formula"?Gg():t==="order"?P_():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Lp(()=>{Ig(),de(ob(),nb),iA()});de(ob(),nb);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||ue(l.view)&&!l.mould)return;t.preventDefault();let{undo:e,redo:n}=za();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return vf();pn()});function nA(){if(!l.run.file)return jc();h({fault:void 0}),pn(),ut()}function jc(){h({fault:void 0}),Vg().catch(t=>{h({fault:oA(t)}),t instanceof v&&t.may_pass&&window.setTimeout(jc,2e3)})}function oA(t){return t instanceof v&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var tb=new ResizeObserver(([{target:t}])=>ib(t.offsetHeight)),eb=null;function iA(){let t=document.querySelector(".foremost");t!==eb&&(tb.disconnect(),t?tb.observe(t):ib(0),eb=t)}var ib=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);Uf();Jg();Hc(t=>{ci(),t&&nA()});jc();
