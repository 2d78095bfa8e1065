var Ai=globalThis,Mi=Ai.ShadowRoot&&(Ai.ShadyCSS===void 0||Ai.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,ru=Symbol(),su=new WeakMap,Di=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==ru)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(Mi&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=su.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&su.set(n,t))}return t}toString(){return this.cssText}},au=e=>new Di(typeof e=="string"?e:e+"",void 0,ru);var lu=(e,t)=>{if(Mi)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=Ai.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},cr=Mi?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return au(n)})(e):e;var{is:mg,defineProperty:fg,getOwnPropertyDescriptor:hg,getOwnPropertyNames:gg,getOwnPropertySymbols:_g,getPrototypeOf:$g}=Object,Oi=globalThis,uu=Oi.trustedTypes,wg=uu?uu.emptyScript:"",bg=Oi.reactiveElementPolyfillSupport,Po=(e,t)=>e,dr={toAttribute(e,t){switch(t){case Boolean:e=e?wg:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},du=(e,t)=>!mg(e,t),cu={attribute:!0,type:String,converter:dr,reflect:!1,useDefault:!1,hasChanged:du};Symbol.metadata??=Symbol("metadata"),Oi.litPropertyMetadata??=new WeakMap;var vt=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=cu){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&fg(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:s}=hg(this.prototype,t)??{get(){return this[n]},set(a){this[n]=a}};return{get:i,set(a){let c=i?.call(this);s?.call(this,a),this.requestUpdate(t,c,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??cu}static _$Ei(){if(this.hasOwnProperty(Po("elementProperties")))return;let t=$g(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(Po("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Po("properties"))){let n=this.properties,o=[...gg(n),..._g(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(cr(i))}else t!==void 0&&n.push(cr(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return lu(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:dr).toAttribute(n,o.type);this._$Em=t,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),a=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:dr;this._$Em=i;let c=a.fromAttribute(n,s.type);this[i]=c??this._$Ej?.get(i)??c,this._$Em=null}}requestUpdate(t,n,o,i=!1,s){if(t!==void 0){let a=this.constructor;if(i===!1&&(s=this[t]),o??=a.getPropertyOptions(t),!((o.hasChanged??du)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(t)&&!this.hasAttribute(a._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:s},a){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,a??n??this[t]),s!==!0||a!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:a}=s,c=this[i];a!==!0||this._$AL.has(i)||c===void 0||this.C(i,void 0,s,c)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};vt.elementStyles=[],vt.shadowRootOptions={mode:"open"},vt[Po("elementProperties")]=new Map,vt[Po("finalized")]=new Map,bg?.({ReactiveElement:vt}),(Oi.reactiveElementVersions??=[]).push("2.1.2");var mr=globalThis,pu=e=>e,Fi=mr.trustedTypes,mu=Fi?Fi.createPolicy("lit-html",{createHTML:e=>e}):void 0,fr="$lit$",kt=`lit$${Math.random().toFixed(9).slice(2)}$`,hr="?"+kt,yg=`<${hr}>`,un=document,Do=()=>un.createComment(""),Mo=e=>e===null||typeof e!="object"&&typeof e!="function",gr=Array.isArray,wu=e=>gr(e)||typeof e?.[Symbol.iterator]=="function",pr=`[ 	
\f\r]`,Ao=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,fu=/-->/g,hu=/>/g,an=RegExp(`>|${pr}(?:([^\\s"'>=/]+)(${pr}*=${pr}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),gu=/'/g,_u=/"/g,bu=/^(?:script|style|textarea|title)$/i,_r=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),r=_r(1),M=_r(2),nT=_r(3),Pe=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),$u=new WeakMap,ln=un.createTreeWalker(un,129);function yu(e,t){if(!gr(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return mu!==void 0?mu.createHTML(t):t}var vu=(e,t)=>{let n=e.length-1,o=[],i,s=t===2?"<svg>":t===3?"<math>":"",a=Ao;for(let c=0;c<n;c++){let d=e[c],p,m,_=-1,w=0;for(;w<d.length&&(a.lastIndex=w,m=a.exec(d),m!==null);)w=a.lastIndex,a===Ao?m[1]==="!--"?a=fu:m[1]!==void 0?a=hu:m[2]!==void 0?(bu.test(m[2])&&(i=RegExp("</"+m[2],"g")),a=an):m[3]!==void 0&&(a=an):a===an?m[0]===">"?(a=i??Ao,_=-1):m[1]===void 0?_=-2:(_=a.lastIndex-m[2].length,p=m[1],a=m[3]===void 0?an:m[3]==='"'?_u:gu):a===_u||a===gu?a=an:a===fu||a===hu?a=Ao:(a=an,i=void 0);let b=a===an&&e[c+1].startsWith("/>")?" ":"";s+=a===Ao?d+yg:_>=0?(o.push(p),d.slice(0,_)+fr+d.slice(_)+kt+b):d+kt+(_===-2?c:b)}return[yu(e,s+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Oo=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let s=0,a=0,c=t.length-1,d=this.parts,[p,m]=vu(t,n);if(this.el=e.createElement(p,o),ln.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=ln.nextNode())!==null&&d.length<c;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(fr)){let w=m[a++],b=i.getAttribute(_).split(kt),R=/([.?@])?(.*)/.exec(w);d.push({type:1,index:s,name:R[2],strings:b,ctor:R[1]==="."?Li:R[1]==="?"?Bi:R[1]==="@"?Ei:dn}),i.removeAttribute(_)}else _.startsWith(kt)&&(d.push({type:6,index:s}),i.removeAttribute(_));if(bu.test(i.tagName)){let _=i.textContent.split(kt),w=_.length-1;if(w>0){i.textContent=Fi?Fi.emptyScript:"";for(let b=0;b<w;b++)i.append(_[b],Do()),ln.nextNode(),d.push({type:2,index:++s});i.append(_[w],Do())}}}else if(i.nodeType===8)if(i.data===hr)d.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(kt,_+1))!==-1;)d.push({type:7,index:s}),_+=kt.length-1}s++}}static createElement(t,n){let o=un.createElement("template");return o.innerHTML=t,o}};function cn(e,t,n=e,o){if(t===Pe)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=Mo(t)?void 0:t._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=cn(e,i._$AS(e,t.values),i,o)),t}var Ci=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??un).importNode(n,!0);ln.currentNode=i;let s=ln.nextNode(),a=0,c=0,d=o[0];for(;d!==void 0;){if(a===d.index){let p;d.type===2?p=new An(s,s.nextSibling,this,t):d.type===1?p=new d.ctor(s,d.name,d.strings,this,t):d.type===6&&(p=new Ii(s,this,t)),this._$AV.push(p),d=o[++c]}a!==d?.index&&(s=ln.nextNode(),a++)}return ln.currentNode=un,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},An=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=cn(this,t,n),Mo(t)?t===u||t==null||t===""?(this._$AH!==u&&this._$AR(),this._$AH=u):t!==this._$AH&&t!==Pe&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):wu(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==u&&Mo(this._$AH)?this._$AA.nextSibling.data=t:this.T(un.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Oo.createElement(yu(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Ci(i,this),a=s.u(this.options);s.p(n),this.T(a),this._$AH=s}}_$AC(t){let n=$u.get(t.strings);return n===void 0&&$u.set(t.strings,n=new Oo(t)),n}k(t){gr(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of t)i===n.length?n.push(o=new e(this.O(Do()),this.O(Do()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=pu(t).nextSibling;pu(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},dn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(t,n=this,o,i){let s=this.strings,a=!1;if(s===void 0)t=cn(this,t,n,0),a=!Mo(t)||t!==this._$AH&&t!==Pe,a&&(this._$AH=t);else{let c=t,d,p;for(t=s[0],d=0;d<s.length-1;d++)p=cn(this,c[o+d],n,d),p===Pe&&(p=this._$AH[d]),a||=!Mo(p)||p!==this._$AH[d],p===u?t=u:t!==u&&(t+=(p??"")+s[d+1]),this._$AH[d]=p}a&&!i&&this.j(t)}j(t){t===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},Li=class extends dn{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===u?void 0:t}},Bi=class extends dn{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==u)}},Ei=class extends dn{constructor(t,n,o,i,s){super(t,n,o,i,s),this.type=5}_$AI(t,n=this){if((t=cn(this,t,n,0)??u)===Pe)return;let o=this._$AH,i=t===u&&o!==u||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,s=t!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},Ii=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){cn(this,t)}},ku={M:fr,P:kt,A:hr,C:1,L:vu,R:Ci,D:wu,V:cn,I:An,H:dn,N:Bi,U:Ei,B:Li,F:Ii},vg=mr.litHtmlPolyfillSupport;vg?.(Oo,An),(mr.litHtmlVersions??=[]).push("3.3.3");var ut=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new An(t.insertBefore(Do(),s),s,void 0,n??{})}return i._$AI(e),i};var $r=globalThis,Dn=class extends vt{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=ut(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Pe}};Dn._$litElement$=!0,Dn.finalized=!0,$r.litElementHydrateSupport?.({LitElement:Dn});var kg=$r.litElementPolyfillSupport;kg?.({LitElement:Dn});($r.litElementVersions??=[]).push("4.2.2");var xu=()=>{},wr=!1;function Tu(e){xu=e}function z(){wr||(wr=!0,queueMicrotask(()=>{wr=!1,xu()}))}function Ru(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}var Ae=e=>e.replaceAll("~","~0").replaceAll("/","~1");function $(e,t){let n=e;for(let o of Ru(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function C(e,t,n){return br(e,Ru(t),n)}function br(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let c=[...e],d=br(c[Number(o)],i,n);return d===void 0?c.splice(Number(o),1):c[Number(o)]=d,c}let s={...e??{}},a=br(s[o],i,n);return a===void 0?delete s[o]:s[o]=a,s}var yr=()=>/^#([0-9a-f]{48})$/.exec(location.hash)?.[1],Wi="";function Su(e){Wi=e,sessionStorage.setItem("key",e)}Su(yr()??sessionStorage.getItem("key")??"");var Pu=()=>yr()!==void 0;function Au(e){addEventListener("hashchange",()=>{let t=yr();if(!t)return;let n=t!==Wi;Su(t),e(n)})}var Du={status:0,body:new Blob};async function xg(e,t,n,o){try{let i=await fetch(t,{method:e,body:n,headers:{"X-Bench-Key":Wi},signal:o});return{status:i.status,body:await i.blob()}}catch{return Du}}function Tg(e,t,n,o){return new Promise(i=>{let s=new XMLHttpRequest;s.open(e,t),s.setRequestHeader("X-Bench-Key",Wi),s.responseType="blob",s.upload.onprogress=a=>o(a.total?a.loaded/a.total:0),s.onerror=()=>i(Du),s.onload=()=>i({status:s.status,body:s.response}),s.send(n)})}var Mu={send:(e,t,n,o,i)=>n!==void 0&&o?Tg(e,t,n,o):xg(e,t,n,i)};var Rg=Mu,Z=({problem:e,remedy:t})=>[e,t].filter(Boolean).join("; "),y=class extends Error{constructor(n,o,i={}){super(o.line);this.status=n;this.complaint=o;this.answer=i}status;complaint;answer;get may_pass(){return this.status===0||this.status===503}},Cu={file:"",field:"",problem:"Brimwright is not running",remedy:"start brimwright again and open the address it prints; what you typed is kept here",line:"Brimwright is not running: start it again and open the address it prints. What you typed is kept here."},Lu=e=>e===Cu||e.is_fault===!0,Ou="what you typed is kept here";function Sg(e){let[t,n]=e===503?["the program has too much to do at once",`it is asked again in a moment; ${Ou}`]:["internal error in brimwright (your files are not at fault)",`${Ou}: change something, or ask again`];return{file:"",field:"",problem:t,remedy:n,line:`${t} (answer ${e}); ${n}.`}}function Fu(e,t){if(e===0)return new y(0,Cu);let n=Sg(e),o={...n,...t.complaint};return e>=500&&Object.assign(o,{is_fault:!0,remedy:o.remedy||n.remedy}),new y(e,o,t)}async function Pg(e,t){try{return Fu(e,JSON.parse(await t.text()))}catch{return Fu(e,{})}}async function Bu(...e){let{status:t,body:n}=await Rg.send(...e);if(t>=200&&t<300)return n;throw await Pg(t,n)}var xt=async(...e)=>JSON.parse(await(await Bu(...e)).text()),xe=(e,t)=>xt("POST",e,JSON.stringify(t)),Ct=()=>xt("GET","/api/files"),he=e=>xt("GET",`/api/file?file=${encodeURIComponent(e)}`),Mn=e=>xt("PUT","/api/file",JSON.stringify(e)),Eu=(e,t)=>xe("/api/file/rename",{file:e,to:t}),vr=(e,t=!1)=>xe("/api/file/remove",{file:e,even_so:t}),Iu=e=>xe("/api/file/restore",{removed:e}),Wu=e=>e?`&run=${encodeURIComponent(e.run)}&bench=${encodeURIComponent(e.version)}`:"",Ag=12e3,Dg=([e,t])=>`&${encodeURIComponent(`file:${e}`)}=${t??""}`;async function On(e,t){let n={changed:{},unreadable:[]},o=`/api/changed?wait=0${Wu(t)}`;for(let i of Hu(e)){let{changed:s,unreadable:a,bench:c}=await xt("GET",o+i);Object.assign(n.changed,s),n.unreadable.push(...a),n.bench=c}return n}function Hu(e){let t=[""];for(let n of[...e].map(Dg))t.at(-1).length+n.length>Ag?t.push(n):t[t.length-1]+=n;return t}var Mg=crypto.randomUUID(),kr=2e4;async function ju(e,t,n){let[o,...i]=Hu(e);if(i.length)return On(e,t);let a=`/api/changed?${`wait=${kr/1e3}&tab=${Mg}`}${Wu(t)}${o}`;return xt("GET",a,void 0,void 0,n)}var Hi=e=>xe("/api/plan",e),Nu=e=>xe("/api/plan",{...e,explain:!0}),Uu=e=>xe("/api/gauge",{...e,inspect:!0}),Lt=e=>xe("/api/gauge",e),xr=e=>xe("/api/list",{what:e}),zu=async()=>(await xr("fats")).fats,Ju=async()=>(await xr("moulds")).moulds,qu=async()=>(await xr("tips")).tips,Bt=e=>Bu("POST","/api/document",JSON.stringify(e)),Vu=async e=>(await xe("/api/document",{...e,open:!0})).address,Ku=(e,t)=>xt("POST",`/api/mesh?name=${encodeURIComponent(e.name)}`,e,t),Gu=async(e,t)=>(await xe("/api/keep",{upload:e,as:t})).file;var G=e=>`${JSON.stringify(e,null,2)}
`;function oe(e){try{let t=JSON.parse(e??"");return t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0}catch{return}}var ne=["pour","pipe","apart"],we=["studio","own_fats","own_tips"],ji=e=>we.includes(e);var Yu={};function Xe(e,t){(Yu[e]??=[]).push(t)}function le(e,t){for(let n of Yu[e]??[])n(t)}var De=e=>e.slice(0,e.lastIndexOf("/")+1),Ee=e=>e.slice(e.lastIndexOf("/")+1),Qu=(e,t)=>{let n=De(e);return n?Og(n+t):t};function Og(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function Et(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function Fn(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|formula|fats|tips))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let s=i===1?e:`${n}_${i}${o}`;if(!t.some(a=>a.file===s))return s}}var Fg=["mould","formula","file","own_fats","own_tips"];function Tr(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?Tr(o,i):Fg.includes(n)?[i]:[]})}function Rr(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...Tr(e)])[n,o]=[C(n,i,void 0),C(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Sr(e,t){let n=["/id",...Tr(e)].filter(o=>$(e,o)!==$(t,o));return o=>n.reduce((i,s)=>$(i,s)===$(e,s)?C(i,s,$(t,s)):i,o)}var q=(e,t)=>({name:e,label:t,unit:"mm"}),It=q("height","Floor to brim"),Ni={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Pr={block:{words:"Box, loaf or slab",measures:[q("length","Longer side at the brim"),q("width","Shorter side"),It,Ni,{...q("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[q("floor_diameter","Across the floor"),q("brim_diameter","Across the brim"),It]},fluted_cup:{words:"Fluted cup",measures:[q("floor_diameter","Across the floor"),q("brim_diameter","Across the brim"),It,{name:"flutes",label:"Flutes",unit:"",count:!0},q("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},q("across_flats","Across the flats"),It,Ni]},dome:{words:"Bowl",measures:[q("diameter","Across the brim"),It]},half_ball:{words:"Half ball",measures:[q("diameter","Across the brim")]},ball:{words:"Ball",measures:[q("diameter","Across")]},half_ring:{words:"Half ring",measures:[q("centre_diameter","Ring, middle to middle of the tube"),q("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[q("outer_floor_diameter","Cup, across the floor"),q("outer_brim_diameter","Cup, across the brim"),q("post_floor_diameter","Post, at its foot"),q("post_brim_diameter","Post, at its top"),It]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[q("height","Height"),q("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[It,Ni],points:{columns:[q("x","From the left"),q("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[q("side","Straight edge, tip to round"),It,Ni]}},Zu=Object.fromEntries(Object.entries(Pr).map(([e,{words:t}])=>[e,t])),Cn=e=>Pr[e]?.measures??[],Wt=e=>Pr[e]?.points;var Ar=(e,t)=>String($(e,t)??"").trim(),Fo=e=>Ar(e,"/shape/kind"),et=(e,t)=>$(e,`/${t}`)!==void 0,Dr=e=>["body","skin"].includes(Ar(e,"/mesh/role"));function Ie(e,t){let n=$(e,t);return Array.isArray(n)?n:[]}function Xu(e,t){return(Wt(Fo(e))?.columns??[]).map(({name:o})=>String($(t,`/${o}`)??"").trim())}function Co(e){return Ie(e,"/shape/points").flatMap((t,n)=>Xu(e,t).every(Boolean)?[n]:[])}function Ui(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return Ie(e,"/shape/points").flatMap((n,o)=>t(Xu(e,n))?[o]:[])}var Mr=e=>Ie(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function ec(e){let t=e,n=(o,i)=>{if(!Array.isArray($(t,o)))return;let s=i.map(a=>$(e,`${o}/${a}`));t=C(t,o,s)};return Wt(Fo(e))&&n("/shape/points",Co(e)),n("/water/weighings",Mr(e)),t}function zi(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let s=n==="/shape/points"?Co(e):Mr(e);return`${n}/${s[Number(o)]??o}${i}`}function Lo(e){let t=[],n=i=>Ar(e,i)!=="",o=(i,s)=>{i||t.push(s)};if(et(e,"shape")){let i=Fo(e);o(i!=="","the shape");for(let{name:a,label:c,optional:d}of Cn(i))o(d||n(`/shape/${a}`),c.toLowerCase());let s=Wt(i);s&&o(Co(e).length>=s.least,`${s.least} points at least`)}if(et(e,"water")){o(n("/water/temperature"),"the water's temperature"),o($(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Mr(e).length>0,"a weighing of water")}return!Dr(e)&&!et(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var pn={name:"run",list:"runs",new_name:({shipped:e,file:t,now:n})=>e?Ee(t):Et(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},Ln={name:"formula",list:"formulas",new_name:({shipped:e,file:t,now:n})=>e?Ee(t):Et(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},Or=(e,t)=>({name:e,list:t,new_name:({file:n})=>Ee(n),written:n=>n,is_begun:()=>!0}),Ji=Or("studio","studios"),qi=Or("fats","fats"),Vi=Or("tips","tips"),Me={name:"mould",list:"moulds",new_name:({now:e})=>Et(String(e.name),".json"),written:e=>({...ec(e),name:String(e.name??"").trim()}),is_begun:e=>et(e,"shape")||et(e,"mesh")};var tc={},nc={kind:pn,id:"",file:"",version:null,shipped:!1,now:tc,saved:tc,unanswered:[]},tt={view:"reading",came_from:"set-up",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:nc,formulas:{},beside:{},past:[],future:[],is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(Lg()),folded:new Set,units:Cg(),announcement:""},l=tt;function Cg(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}var oc="set-up ";function Lg(){try{let e=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(e)?e.filter(t=>typeof t=="string"):[]}catch{return[]}}function Bg(){let e=[...tt.open].filter(t=>t.startsWith(oc));localStorage.setItem("parts",JSON.stringify(e))}function h(e){Object.assign(tt,e),z()}var E=e=>h({announcement:e});function v(e,t){Object.assign(e,t),z()}function ct(e,t){let{[e]:n,...o}=tt.formulas;h({formulas:t?{...o,[e]:t}:o})}function dt(e,t){let n=new Set(tt[e]);n.delete(t)||n.add(t),h({[e]:n}),t.startsWith(oc)&&Bg()}function Bn(e=nc){h({run:e,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,complaint:void 0,typed:void 0,measured:void 0})}function ue(e){tt.open.has(e)||h({open:new Set(tt.open).add(e)})}function mn(e,t,{name:n,note:o}={}){if(!tt.files)return;let i={file:t,name:String(n??""),note:String(o??""),shipped:!1},s=tt.files[e].filter(c=>c.file!==t),a=tt.files[e].findIndex(c=>c.file===t);s.splice(a<0?s.length:a,0,i),h({files:{...tt.files,[e]:s}})}async function pt({kind:e,name:t,text:n,from:o,about_to:i,is_own:s}){for(;;){let{runs:a=[],formulas:c=[],moulds:d=[],studios:p=[],fats:m=[],tips:_=[]}=l.files??{},w=Fn(t,[...a,...c,...d,...p,...m,..._]);i?.(w);let b=await Eg(w,n,o);if(mn(e.list,w,oe(b.there.text)??{name:w}),b.is_new||s?.(b.there))return b.there}}async function Eg(e,t,n){try{return{is_new:!0,there:await Mn({file:e,version:null,text:t,from:n})}}catch(o){if(!(o instanceof y)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var Ki=e=>`unsaved ${e.name} ${l.files?.folder??""} `;function fn({kind:e,id:t,file:n,version:o,shipped:i,now:s},a){if(e.is_begun(s))try{let c={id:t,file:n,version:o,shipped:i,text:G(s),copy:a};localStorage.setItem(Ki(e)+t,JSON.stringify(c))}catch{}}function Fr(e,t){try{return JSON.parse(localStorage.getItem(Ki(e)+t)??"null")??void 0}catch{return}}var Ht=(e,t)=>localStorage.removeItem(Ki(e)+t);function Gi(e){let t=Ki(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>Fr(e,o)??[])}var Ig=300,j=e=>e.now!==e.saved;function Bo(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function Oe(e,t,n=t){let o=await he(t),i=Wg(e,JSON.parse(o.text),o.shipped),s=Fr(e,n),a=s?.copy&&o.shipped?await Hg(e,s,i):void 0;if(a)return Ht(e,n),Oe(e,a);let{version:c,shipped:d=!1}=o,p={kind:e,id:n,file:t,version:c,shipped:d,now:i,saved:i,unanswered:[]};return s&&jg(p,s,o),p}var Wg=(e,t,n=!1)=>e.name==="run"&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function Hg(e,t,n){if(!l.files?.[e.list].some(s=>s.file===t.copy))return;let o=oe(t.text),i=oe((await he(t.copy)).text);if(!(!o||!i||G(o)===G(n)))return Rr(e.written(o),i)?t.copy:void 0}function jg(e,t,n){let o=oe(t.text);if(!o||G(o)===G(e.now))return Ht(e.kind,e.id);v(e,{now:o}),!(t.version===n.version||n.shipped)&&(v(e,{version:t.version}),dc(e,n))}function ge(e,t){let n=e.now;v(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),fn(e),le("edited",{file:e,before:n})}var ic=new WeakMap,Cr=async e=>ic.get(e),mt=e=>sc(e,()=>Ng(e)),En=e=>sc(e,()=>e.shipped?rc(e,ac):Promise.resolve());function sc(e,t){let n=Cr(e).then(t);return ic.set(e,n.catch(()=>{})),n}async function Ng(e){!j(e)||e.theirs||await rc(e,e.shipped||!e.file?ac:lc)}async function rc(e,t){v(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof y&&v(e,{failed:Z(n.complaint)}),n}}async function ac(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,s=t.written(o),a=await pt({kind:t,name:t.new_name(e),text:G(s),from:i,about_to:m=>fn(e,m),is_own:({text:m})=>i!==void 0&&Rr(s,oe(m)??{})}),c=JSON.parse(a.text),d=Sr(s,c),p=e.now===o?c:d(e.now);Ht(t,n),v(e,{id:a.file,file:a.file,version:a.version,shipped:!1,now:p,saved:c}),j(e)&&fn(e),i!==void 0&&le("copied",{file:e,from:i,renamed:d})}async function lc(e){let{version:t,now:n}=e,o=G(e.kind.written(n));v(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Yi(e,n,(await Mn({file:e.file,version:t,text:o})).version)}catch(i){if(!(i instanceof y)||i.status!==409)throw i;uc(e,i.answer),j(e)&&!e.theirs&&await lc(e)}}function Yi(e,t,n){v(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),j(e)?fn(e):Ht(e.kind,e.id),mn(e.kind.list,e.file,t)}function uc(e,{version:t,text:n}){if(n===G(e.kind.written(e.now)))return Yi(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(v(e,{unanswered:[]}),o)return v(e,{version:t,saved:void 0,theirs:void 0});let i=j(e)||e.theirs?void 0:oe(n);i?Ug(e,i,t):dc(e,{version:t,text:n})}function Ug(e,t,n){le("giving_way",{file:e}),v(e,{set_aside:e.now,is_taken:!0,now:t}),Yi(e,t,n),E(`${e.file} was changed outside this page, and stands here as it is now.`),le("gave_way",{file:e})}var cc=e=>v(e,{set_aside:void 0,is_taken:void 0});function dc(e,{version:t,text:n}){v(e,{theirs:{version:t,text:n}}),fn(e),E(n===null?`${e.file} was deleted outside this page. Save it again, or leave it deleted?`:`${e.file} was changed outside this page. Which version do you want to keep?`),le("conflict",{file:e})}function pc(e){if(!e.theirs)return;let t=oe(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return v(e,{failed:n})}le("giving_way",{file:e}),v(e,{set_aside:e.now,now:t}),Yi(e,t,e.theirs.version),le("gave_way",{file:e})}function mc(e){e.theirs&&(v(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),fn(e),le("unwritten",{file:e}))}var hn=({theirs:e})=>e?.text===null;function fc(e){hn(e)&&(Ht(e.kind,e.id),v(e,{saved:e.now,theirs:void 0,failed:void 0}),E(`${e.file} stays deleted.`),le("left_deleted",{file:e}))}function hc(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;ge(e,t),v(e,{set_aside:o?void 0:n})}var gc=e=>(e.theirs??e).version;function _c(e,t){v(e,{id:t,file:t}),le("renamed",{file:e,renamed:n=>n})}async function $c(e){let{version:t,text:n}=await he(e.file),o=oe(n);if(!o||e.theirs||t===e.version)return;let i=Sr(e.now,o);if(j(e))return v(e,{version:t,now:i(e.now),saved:o});v(e,{version:t,now:o,saved:o}),le("renamed",{file:e,renamed:i})}var wc=e=>e.shipped||!e.file?[]:[[e.file,gc(e)]];async function Lr(e,t,n,o){let i=e.file,s=()=>gc(e)===t&&e.file===i;if(!s()||(await Cr(e),!s()))return!1;o(),await Br();let a=await zg(i,n);return await Cr(e),s()&&(uc(e,a),j(e)&&!e.theirs&&le("unwritten",{file:e})),!0}async function zg(e,t){let n=await t(e);return n===null?{version:n,text:null}:he(e)}var Br=()=>new Promise(e=>setTimeout(e,Ig));var Jg=300,qg=1200,Qi="",bc=0;function Eo(){let e={run:{file:l.run,now:l.run.now}};for(let t of ne){let n=l.formulas[t];n&&(e[t]={file:n,now:n.now})}for(let t of we){let n=l.beside[t];n&&(e[t]={file:n,now:n.now})}return e}function jt(e=""){let t=performance.now();e&&e===Qi&&t-bc<=qg&&l.past.length||Er(Eo()),h({future:[]}),Qi=e,bc=t}var Er=e=>h({past:[...l.past,e].slice(-Jg)});function In(e){Er(yc(Eo(),e,()=>e.saved??{}))}function yc(e,t,n){let o=Object.entries(e).map(([i,s])=>s.file===t?[i,{file:t,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function Ir(e,t){let n=o=>o.map(i=>yc(i,e,t));h({past:n(l.past),future:n(l.future)})}function Zi(){let e=l.past.at(-1);e&&(h({past:l.past.slice(0,-1),future:[...l.future,Eo()]}),kc(e,"Undone"))}function vc(){let e=l.future.at(-1);e&&(h({past:[...l.past,Eo()],future:l.future.slice(0,-1)}),kc(e,"Redone"))}function kc(e,t){Qi="",h({typed:void 0});for(let n of[...we,...ne,"run"])Vg(n,e);E(t)}function Vg(e,t){let n=t[e];if(ji(e))return Kg(e,n);let o=e==="run"?n?.file===l.run:l.formulas[e]!==void 0;!n||!o||(e!=="run"&&ct(e,n.file),n.file.now!==n.now&&ge(n.file,n.now))}function Kg(e,t){t&&t.file===l.beside[e]&&t.file.now!==t.now&&ge(t.file,t.now)}var Xi=e=>e===l.run||ne.some(t=>l.formulas[t]===e)||we.some(t=>l.beside[t]===e);Xe("giving_way",({file:e})=>{Xi(e)&&(Qi="",Er(Eo()),h({typed:void 0}))});for(let e of["copied","renamed"])Xe(e,({file:t,renamed:n})=>Ir(t,n));function Wn(e){return e==="run"?l.run:ji(e)?l.beside[e]:l.formulas[e]}var Gg=e=>Wn(e)?.now,g=(e,t)=>$(Gg(e),t),F=(e,t)=>String(g(e,t)??"");function _e(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function X(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function W(e,t,n){let o=Wn(e);!o||$(o.now,t)===n||(jt(`${e} ${t}`),ge(o,C(o.now,t,n)))}function xc(e,t){let n=Wn(e);n&&(jt(),h({typed:void 0}),ge(n,t(n.now)))}function Hn(e){jt(),h({typed:void 0});for(let[t,n]of e){let o=Wn(t);o&&ge(o,n(o.now))}}var Tt=e=>Qu(l.run.file,e);function Fe(e,t){let n=Tt(e);return t?.some(o=>o.file===n)?n:e}var Wr=(e,t)=>{let{[e]:n,...o}=l.beside;h({beside:t?{...o,[e]:t}:o})};function Rc(e){for(let t of we)l.beside[t]===e&&Wr(t,void 0)}async function Yg(e,t){try{let n=await Oe(e,t);return j(n)&&In(n),n}catch(n){if(!(n instanceof y||n instanceof SyntaxError))throw n;return}}async function gn(e,t,n){let o=l.beside[e];if(o?.file===n)return o;let i=await Yg(t,n);return Wr(e,i),i&&j(i)&&le("unwritten",{file:i}),i?.theirs&&le("conflict",{file:i}),i}var Sc=()=>Tt("studio.json");async function jn(e=!1){let t=Sc(),n=(l.files?.studios??[]).some(o=>o.file===t);l.beside.studio?.file!==t&&(n||e?await gn("studio",Ji,t):Wr("studio",void 0))}async function Pc(){l.run.shipped&&await En(l.run);let e=Sc();await gn("studio",Ji,e)||(await Qg(e),await gn("studio",Ji,e))}async function Qg(e){try{await Mn({file:e,version:null,text:G({schema:"brimwright.studio/1"})})}catch(t){if(!(t instanceof y)||t.status!==409)throw t}mn("studios",e)}var Tc=(e,t)=>De(e.file)+t;async function Zg(e){try{return oe((await he(e)).text)!==void 0}catch(t){if(!(t instanceof y))throw t;return!1}}async function es(e){let t=l.formulas[e];if(!t)return;t.shipped&&await En(t);let n=String($(t.now,"/own_fats")??"");if(n){let a=Tc(t,n);return gn("own_fats",qi,await Zg(a)?a:n)}let o=(l.files?.fats??[]).find(a=>!a.shipped&&De(a.file)===De(t.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await Ac(qi,Tc(t,"my.fats.json"),i);return W(e,"/own_fats",Ee(s)),gn("own_fats",qi,s)}async function Hr(){l.run.shipped&&await En(l.run);let e="/pipe/beads/own_tips",n=String($(l.run.now,e)??"")||String($(l.beside.studio?.now,"/own_tips")??"");if(n)return gn("own_tips",Vi,Tt(n));let o=De(l.run.file),i=(l.files?.tips??[]).find(c=>!c.shipped&&De(c.file)===o),s={schema:"brimwright.tips/2",tips:[]},a=i?.file??await Ac(Vi,`${o}my.tips.json`,s);return l.beside.studio?W("studio","/own_tips",Ee(a)):W("run",e,Ee(a)),gn("own_tips",Vi,a)}async function Ac(e,t,n){let{file:o}=await pt({kind:e,name:t,text:G(n)});return mn(e.list,o),o}function Dc(e,t){let n=(i,s)=>String($(i,s)??"").endsWith(Ee(t));for(let i of ne)e===l.beside.own_fats&&n(l.formulas[i]?.now,"/own_fats")&&W(i,"/own_fats",e.file);let o="/pipe/beads/own_tips";e===l.beside.own_tips&&n(l.run.now,o)&&W("run",o,e.file)}var Io=[],Wo=()=>Io.at(-1);function jr(e){Io=[...Io,e],h({list_told:e.words}),E(e.words)}async function Fc(){let e=Wo();e&&(await e.undo(),Io=Io.slice(0,-1),h({list_told:""}),E("Undone"),await Nt())}var Nt=async()=>h({files:await Ct()});async function Cc(e,t){let{$schema:n,...o}=JSON.parse((await he(t.file)).text),i=`${t.name||t.file}, copy`,s={...o,name:i,...e.name==="run"?{id:crypto.randomUUID()}:{}},{file:a}=await pt({kind:e,name:e.new_name(Bo(e,s)),text:G(s),from:t.file});return await Nt(),jr({words:`Copied ${t.name||t.file}.`,undo:async()=>{await vr(a,!0)}}),a}var Lc=e=>/(\.(run|formula))?\.json$/.exec(e)?.[0]??"",Ho=e=>Ee(e).slice(0,-Lc(e).length||void 0),Bc=(e,t)=>De(e)+t+Lc(e),Mc=e=>[l.run,...ne.map(t=>l.formulas[t])].find(t=>t?.file===e);async function Ec(e,t,n){let o={name:t.name,note:t.note,stem:Ho(t.file)};await Oc(e,t.file,n),await Nt();let i=Bc(t.file,n.stem);jr({words:`Changed ${n.name||i}.`,undo:()=>Oc(e,i,o)})}async function Oc(e,t,{name:n,note:o,stem:i}){let s=Mc(t),a=s??await Oe(e,t),{note:c,...d}=a.now,p=o?{...d,name:n,note:o}:{...d,name:n};if(G(p)!==G(a.now)&&(s&&jt(),ge(a,p),await mt(a),a.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let m=Bc(t,i);if(m===t)return;let{renamed_in:_}=await Eu(t,m);s&&_c(s,m);for(let w of _){let b=Mc(w);b&&await $c(b)}}async function Ic(e,t){let{removed:n}=await vr(e.file,t);l.run.file===e.file&&Bn(),await Nt(),jr({words:`Removed ${e.name||e.file}.`,undo:async()=>{await Iu(n)}})}async function Ut(){for(let e of["pour","pipe"]){let t=$(l.run.now,`/${e}/formula`);typeof t=="string"&&t?await Xg(e,Fe(t,l.files?.formulas)):ct(e,void 0)}}async function Xg(e,t){if(l.formulas[e]?.file===t)return;let n=ne.map(o=>l.formulas[o]).find(o=>o?.file===t);if(ct(e,n),!n)try{let o=await Nr(t);ct(e,o),j(o)&&le("unwritten",{file:o}),o.theirs&&le("conflict",{file:o})}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o}}async function Nr(e){let t=await Oe(Ln,e);return j(t)&&In(t),t}var jo=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function Nn(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=s=>20+t+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:a,indices:c,material:d}]})=>({name:s,positions:new Float32Array(e,o(a.POSITION),i(a.POSITION)*3),indices:new Uint32Array(e,o(c),i(c)),colour:n.materials[d].pbrMetallicRoughness.baseColorFactor}))}function Hc(e,t,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],a=[],{positions:c,indices:d}=e;for(let p=0;p<d.length;p+=3){let m=[];for(let _=0;_<3;++_){let w=3*d[p+_],b=3*d[p+(_+1)%3],R=c[w+i]-t,J=c[b+i]-t;if(R>0==J>0)continue;let Be=R/(R-J),rn=[1e3*(c[w]+Be*(c[b]-c[w])),1e3*s*(c[w+o]+Be*(c[b+o]-c[w+o]))];R>0?m.push(rn):m.unshift(rn)}m.length===2&&a.push([m[0],m[1]])}return a}function jc(e){let t=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of e){let s=t(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of e){let s=[],a=n.get(t(i[0]))?.shift();for(;a;)s.push(a[0]),a=n.get(t(a[1]))?.shift();s.length>2&&o.push(s)}return o}function No(e){let t=e.positions,[n,o,i,s,a,c]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<t.length;p+=3)i=Math.min(i,t[p]),s=Math.max(s,t[p]),a=Math.min(a,t[p+1]),c=Math.max(c,t[p+1]),n=Math.min(n,t[p+2]),o=Math.max(o,t[p+2]);let d=n+(o-n)*.50137;return{loops:jc(Hc(e,d)),left:1e3*i,right:1e3*s,floor:1e3*a,brim:1e3*c,cut_y:-1e3*d}}function Nc(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(s=>jc(Hc(e,n+s*o,"level"))).reduce((s,a)=>Wc(a)>1.001*Wc(s)?a:s)}function Wc(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function Ur(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([s,a],c)=>{let[d,p]=i[(c+1)%i.length];if(!(Math.min(a,p)>t||Math.max(a,p)<t))for(let m of a===p?[s,d]:[s+(t-a)/(p-a)*(d-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[e.left,e.right]}var Uc=40,e_=2e3,zr=0;async function zc(e){let t=await Bt({kind:"glb",gauge:e}),n=Nn(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Un(e){let[t,n]=await Promise.all([Lt(e),zc(e)]),o=No(n);return{gauge:t,outline:o,above:Nc(n,o)}}async function t_(e){let{pockets:t}=await Lt(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:Uc},(i,s)=>`${(n*(s+1)/Uc).toFixed(4)} mm`);return Lt({...e,depth:o})}function nt(){n_()}async function n_(){let e=$(l.run.now,"/pour/mould");if(typeof e!="string")return;let t=++zr,n=Fe(e,l.files?.moulds);try{let[o,i]=await Promise.all([t_({file:n}),zc({file:n})]);t===zr&&h({measured:{mould:n,gauge:o,outline:No(i)},measuring_failed:void 0})}catch(o){if(t!==zr)return;if(!(o instanceof y))throw o;h({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(nt,e_)}}var Jr=e=>[...new Set(e.flatMap(t=>l.formulas[t]??[]))],qr=()=>we.flatMap(e=>l.beside[e]??[]),Jc=e=>e.filter(t=>t.theirs),Rt=e=>Jc([...Jr(e==="apart"?["apart"]:["pour","pipe"]),...qr()])[0],ts=()=>[l.run,...Jr(ne),...qr()].filter(e=>e.is_taken&&!e.theirs),ns=()=>Jc([l.run,...Jr(ne),...qr()]);var Uo=()=>l.formulas.apart?"apart":"run",qc=e=>h({dangers:{...l.dangers,[Uo()]:e}});function Vc(e){let t=e.cautions.filter(n=>n.severity==="danger");qc(t.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function Kc(e){e.lye_heavy&&qc([{text:Z(e),is_of_heat:!1}])}var o_=400,i_=2e3,os=0;function zo(){clearTimeout(os),os=window.setTimeout(()=>{ot()},o_)}async function ot(){clearTimeout(os);let{run:e}=l;try{await mt(e),j(e)&&!e.theirs&&e===l.run&&zo()}catch(t){if(!(t instanceof y))throw t;t.may_pass&&(os=window.setTimeout(()=>{ot()},i_))}}var Gc=Promise.resolve();function zn(){let e=Gc.then(s_);return Gc=e.catch(()=>{}),e}async function s_(){for(let e of ne){let t=l.formulas[e];!t||!j(t)||t.theirs||(t.shipped&&e!=="apart"&&await En(l.run),await mt(t))}for(let e of we){let t=l.beside[e];t&&j(t)&&!t.theirs&&await mt(t)}}function Yc(e){let t=l.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=Fe(String(n?.mould??""),l.files?.moulds);return{file:Fn("trial.run.json",l.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:s,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...r_(t)}}}function r_(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}var it=new Map,Jo=new Set,a_={changed:{},unreadable:[]},Jn=()=>new Set([...ne.flatMap(e=>l.formulas[e]??[]),...we.flatMap(e=>l.beside[e]??[])]);async function Qc(){let e=l_(),t=new Set([...Jn()].map(({file:o})=>o));for(let o of it.keys())!e.has(o)&&!t.has(o)&&it.delete(o);for(let o of Jo)e.has(o)||Jo.delete(o);let n=[...e].filter(o=>!it.has(o));for(let[o,i]of await Zc(n))it.has(o)||it.set(o,i)}async function Zc(e){let t=e.filter(o=>!Jo.has(o)),n=t.length?await On(new Map(t.map(o=>[o,null]))):a_;return Gr(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var Vr=async e=>(await Zc([e])).get(e)??null,Kr=()=>new Map([...it].filter(([e])=>!Jo.has(e)));function l_(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(Tt(o)),o.includes("..")||e.add(o))},n=l.run.now;e.add(Tt("studio.json")),t($(n,"/pour/mould")),t($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t($(o,"/mould"));for(let o of["pour","pipe"])l.formulas[o]||t($(n,`/${o}/formula`));for(let{file:o,now:i}of Jn()){let s=i.own_fats;typeof s=="string"&&s&&e.add(De(o)+s).add(s)}t($(l.beside.studio?.now,"/own_tips"));for(let o of we)e.delete(l.beside[o]?.file??"");return e}function Xc(e,{changed:t}){let n=Object.keys(t).filter(o=>it.has(o)&&it.get(o)===e.get(o));for(let o of n)it.set(o,t[o]);return n}var Gr=e=>e.forEach(t=>Jo.add(t));function ed(){return[...Jn()].flatMap(({file:e,version:t})=>{let n=it.get(e)??t;return it.delete(e),n===t?[]:[e]})}var td=0,Yr=()=>td;function Qr(e){++td,h({is_old:!0,changed_beside:e})}var u_=1e3,c_=450,is=!1,_n=!1,Zr=0;function Y(){h({is_old:!0}),is?_n=!0:qn()}async function qn(){if(is){_n=!0;return}is=!0,nd(!1);try{do _n=!1,await d_();while(_n)}finally{is=!1,nd(!0),z()}}var nd=e=>{document.documentElement.dataset.settled=String(e)};function od(){let{run:e}=l,{apart:t}=l.formulas,{file:n,now:o}=e;return()=>{let i=e===l.run&&(n===e.file||o===e.now);return t===l.formulas.apart&&(t!==void 0||i)}}async function d_(){let e=od();try{await zn(),await Qc(),e=od();let{apart:t}=l.formulas;if(Rt(t?"apart":"run"))return h({is_old:!0});let n=Yr(),o=t?Yc(t.file):{file:l.run.file,run:l.run.now},i=await Hi(o);if(window.clearTimeout(Zr),!e())return void(_n=!0);h({plan:i,planned:o,complaint:void 0}),Vc(i);let s=n===Yr();h({is_old:_n||!s}),s&&h({changed_beside:void 0})}catch(t){if(!(t instanceof y))throw t;if(!e())return void(_n=!0);p_(t)}}function p_(e){h({is_old:!0}),window.clearTimeout(Zr);let t=()=>{h({complaint:e.complaint}),Kc(e.complaint)};l.complaint||!l.plan?t():Zr=window.setTimeout(t,c_),e.may_pass&&window.setTimeout(Y,u_)}var id=e=>xt("GET",`/api/bench?run=${encodeURIComponent(e)}`),sd=e=>xe("/api/bench/tick",e),rd=e=>xe("/api/bench/weigh_cup",e),ad=(e,t)=>xe("/api/bench/anew",{run:e,batch:t}),ld=(e,t)=>xe("/api/bench/finish",{run:e,batch:t});var m_=1e4,Xr=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Xr);var ss=[],Vn=()=>`bench ${l.files?.folder??""}`;function st(){try{return[...JSON.parse(localStorage.getItem(Vn())??"[]"),...ss]}catch{return ss}}function ud(e){try{e.length?localStorage.setItem(Vn(),JSON.stringify(e)):localStorage.removeItem(Vn()),ss=[]}catch{ss=e}}var f_=(e,t)=>e.run===t.run&&e.batch===t.batch&&e.key===t.key;function cd(e){let t={...e,id:crypto.randomUUID(),tab:Xr,at:Date.now()};ud([...st().filter(n=>!f_(n,t)),t])}var rs=e=>ud(st().filter(t=>!e(t))),ea=()=>st().find(e=>e.tab===Xr||Date.now()-e.at>m_);var dd=2e3,Je=e=>h({bench:{...l.bench,...e}}),h_=()=>Je({acts:st()});addEventListener("storage",({key:e})=>{e===Vn()&&h_()});function pd(){let{file:e}=l.run;!e||l.bench.run===e||(h({bench:{run:e,batches:[],complaints:[],acts:st()}}),Kn().then(ia))}function as(){let{run:e,version:t}=l.bench;return t===void 0||e!==l.run.file?void 0:{run:e,version:t}}var qo=0;async function Kn(){let{run:e}=l.bench,t=qo;try{let n=await id(e);if(e!==l.bench.run)return;if(t!==qo)return await Kn();md(n)}catch(n){if(!(n instanceof y))throw n;if(e!==l.bench.run)return;Je({failed:Z(n.complaint)}),fd(n)&&setTimeout(()=>l.bench.failed!==void 0&&void Kn(),dd)}}var md=({batches:e,version:t,complaints:n=[]})=>Je({batches:e,version:t,complaints:n.map(({line:o})=>o),failed:void 0}),fd=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t),Gn=e=>l.bench.batches.find(t=>t.batch===e),na=e=>l.bench.acts.filter(({run:t,batch:n})=>t===l.bench.run&&n===e),Yn=e=>na(e).length>0;function $n(e,t){let n=na(e).find(i=>i.key===t),o=Gn(e)?.ticks[t]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function oa(e){let t=na(e).find(n=>n.reading!==void 0);return(t?t.reading:Gn(e)?.weigh_cup)??""}function hd(e,t,n){let{run:o}=l.bench,s=Gn(e)!==void 0||!l.planned?void 0:G(l.planned.run);cd({run:o,batch:e,seen:t,text:s,...n}),Je({acts:st(),chosen:e,told:void 0}),ia()}var gd=(e,t,n,o)=>hd(e,t,{key:n,done:o}),_d=(e,t,n)=>hd(e,t,{reading:n||null}),ta=!1;async function ia(){if(!ta){ta=!0;try{await navigator.locks.request(Vn(),g_)}finally{ta=!1}st().length&&setTimeout(()=>{ia()},dd)}}async function g_(){for(let e=ea();e;e=ea())if(!await __(e))return}async function __(e){let{id:t}=e;try{let n=await $_(e);return++qo,rs(o=>o.id===t),w_(n,e.run),!0}catch(n){if(!(n instanceof y))throw n;return fd(n)?(Je({unsent:Z(n.complaint)}),!1):(await b_(e,n),!0)}}function $_({run:e,text:t,batch:n,seen:o,key:i,done:s,reading:a}){let c={run:e,text:t,batch:n,seen:o};return i!==void 0?sd({...c,key:i,done:s??!1}):rd({...c,reading:a??null})}function w_(e,t){let n=st();if(t!==l.bench.run)return Je({acts:n,unsent:void 0});let i=[...l.bench.batches.filter(s=>s.batch!==e.batch),e].sort((s,a)=>s.batch-a.batch);Je({acts:n,batches:i,unsent:void 0})}async function b_(e,{complaint:t}){++qo,rs(o=>o.run===e.run&&o.batch===e.batch);let n=`Not taken: ${Z(t)}.`;Je({acts:st(),unsent:void 0,told:{batch:e.batch,words:n}}),E(n),Y(),await Kn()}async function Vo(e){let{run:t}=l.bench;await $d(e,async()=>{let n=await ad(t,e);return rs(o=>o.run===t&&o.batch===e),n})}var sa=e=>$d(e,()=>ld(l.bench.run,e));async function $d(e,t){let{run:n}=l.bench;try{let o=await t();if(++qo,n!==l.bench.run)return;md(o),Je({acts:st(),told:void 0,chosen:e})}catch(o){if(!(o instanceof y))throw o;Je({told:{batch:e,words:Z(o.complaint)}})}}var wd=e=>Je({chosen:e,told:void 0}),bd=()=>Je({told:void 0});var Ko=()=>h({own_fats:{}});function zt(e){let t=Go(e);return Array.isArray(t)?[...t,...l.fats]:l.fats}function Go(e){let t=l.formulas[e],n=$(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=l.beside.own_fats;if(o&&[De(t.file)+n,n].includes(o.file))return vd(o.now)??"none";let i=`${t.file}
${n}`,s=l.own_fats[i];return s||(yd(i,"waiting"),y_(n,t.file).then(a=>yd(i,a)),"waiting")}var yd=(e,t)=>h({own_fats:{...l.own_fats,[e]:t}});async function y_(e,t){for(let n of new Set([De(t)+e,e])){let o=vd(await v_(n));if(o)return o}return"none"}var vd=e=>Array.isArray(e?.fats)?e.fats.map(k_):void 0;async function v_(e){try{return oe((await he(e)).text)}catch{return}}var k_=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:x_(n)});function x_(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var Qn=[],Yo;function ls(){Qn.length=0;for(let{file:e,shipped:t}of l.files?.moulds??[])t||Qn.push(e);Yo===void 0&&xd()}function kd(e){let t=l.own_moulds[e];return!t&&e!==Yo&&!Qn.includes(e)&&Qn.push(e),Yo===void 0&&Qn.length&&xd(),t}async function xd(){for(;(Yo=Qn.shift())!==void 0;){let e=Yo,t=await T_(e);h({own_moulds:{...l.own_moulds,[e]:t}})}}async function T_(e){try{let{pockets:t}=await Lt({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof y))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var Sd=()=>h({own_tips:{}}),ra=!1;function aa(){return!l.tips&&!ra&&(ra=!0,qu().then(e=>h({tips:e}),Pd).finally(()=>ra=!1)),l.tips??[]}function la(e){let t=Tt(e),n=l.beside.own_tips;if(n?.file===t)return Rd(n.now);let o=l.own_tips[t];return o||!e||l.typed?o??[]:(Td(t,[]),he(t).then(({text:i})=>Td(t,Rd(oe(i))),Pd),[])}var Td=(e,t)=>h({own_tips:{...l.own_tips,[e]:t}});function Rd(e){let t=e?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function Pd(e){if(!(e instanceof y))throw e}var us=300,R_=5e3,Fd=2e3,S_=500,Ad=!1,Qo=new AbortController,Cd=()=>Qo.abort(),Ld=()=>document.visibilityState==="hidden";function Bd(){if(Ad)return;Ad=!0;let e=async()=>{Qo=new AbortController;let t=await P_(Qo).then(()=>Ld()?R_:us,()=>Qo.signal.aborted?us:Fd);await Dd(us),await Dd(t-us,Qo.signal),e()};e()}var Dd=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),Ed=()=>[l.run,...l.mould?[l.mould.open]:[],...Jn()],Id=()=>new Map(Ed().flatMap(wc)),Md=()=>JSON.stringify([[...Id().keys()],[...Kr().keys()],as()?.run??null]);async function P_(e){let[t]=ed();t!==void 0&&await Od(t);let[n,o]=[Id(),Kr()],i=new Map([...o,...n]),s=[...o].every(([d,p])=>i.get(d)===p),a=s&&!Ld()?await A_(i,e):await On(i,as());a.bench!==void 0&&await Kn(),Gr(a.unreadable),await D_(n,a);let[c]=Xc(o,s?a:await On(o));c!==void 0&&await Od(c)}async function A_(e,t){let[n,o]=[Md(),Date.now()],i=window.setInterval(()=>{(Md()!==n||Date.now()-o>kr+Fd)&&t.abort()},S_);try{return await ju(e,as(),t.signal)}finally{window.clearInterval(i)}}async function D_(e,{changed:t}){let n=Jn();for(let o of Ed()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await M_(o,i):await Lr(o,i,Vr,()=>{}))}}async function M_(e,t){await Lr(e,t,Vr,()=>Qr(e.file))&&(Ko(),Y())}async function Od(e){Qr(e),await Br(),Ko(),Sd(),h({measured:void 0}),nt(),ls(),await Promise.all([Ut(),jn(!0)]),Y()}var Wd="examples/spring_cups.run.json";async function Hd(e){let t=await Ct();h({files:t});let n=t.runs.some(o=>o.file===e.run);try{await Jt(n?e.run:O_(t),n||!e.run?e.view:void 0)}catch(o){let i=o instanceof y?o.message:`The run opened last can no longer be read: ${String(o)}`;h({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function jd(){let[e,t]=await Promise.all([zu(),Ju()]);h({fats:e,catalogue:t})}function O_(e){let t=localStorage.getItem("run"),n=i=>e.runs.some(s=>s.file===i);return e.open?e.open:t&&n(t)?t:e.runs.find(i=>!i.shipped)?.file??(n(Wd)?Wd:e.runs[0]?.file??"")}async function Jt(e,t="weigh"){if(!e)return h({view:"runs"});l.run.file&&j(l.run)&&await ot();let n=await Oe(pn,e);Bn(n),h({view:t}),localStorage.setItem("run",n.file),j(n)&&(In(n),zo());let o=qn().finally(nt);await Promise.all([o,Ut(),jn()]),Bd()}var F_=()=>(l.files?.studios??[]).some(e=>e.file==="studio.json");async function cs(e){let t=l.run.now,n=t.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.sell,pour:{mould:e.mould,formula:e.formula}};F_()||(o.note=`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,t.spoilage!==void 0&&(o.spoilage=t.spoilage),o.losses={pour:n.pour??{}},o.scales=t.scales??{},t.money&&!l.run.shipped&&(o.money=t.money));let{file:i}=await pt({kind:pn,name:Et(e.name,".run.json"),text:G(o)});ue("set-up pour"),await Jt(i,"set-up")}var Zo=["runs","formulas","moulds"],Xo=["weigh","set-up","watch","money","mould","print"],qe=e=>Zo.some(t=>t===e),ft=e=>Xo.some(t=>t===e);var C_="examples/plain_bars.run.json";function Ve(e){Ko();let t=ft(l.view)?l.view:l.came_from;h({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function ei(e){let t=["pour","pipe"].find(n=>l.run.file&&l.formulas[n]?.file===e);if(t)return Ve(t);l.run.file||await Jt(C_,"reading"),await L_(e)}async function L_(e){let t={past:l.past,future:l.future};h({run_steps:t,past:[],future:[]});try{ct("apart",await Nr(e))}catch(n){throw h({...t,run_steps:void 0}),n}h({plan:void 0,complaint:void 0}),Ve("apart"),qn()}async function B_(){let e=l.formulas.apart!==void 0;return await ds()?(h({view:e?"weigh":l.came_from,typed:void 0}),!0):!1}async function ds(){return l.formulas.apart?await E_()?(qn(),!0):!1:!0}async function E_(){try{await zn()}catch(t){if(!(t instanceof y))throw t;return h({complaint:t.complaint}),!1}if(l.formulas.apart?.theirs)return E("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;ct("apart",void 0);let e={...l.dangers,apart:[]};return h({dangers:e,...l.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Nd(e){let t=l.view==="formula"&&l.formulas[l.formula_of]===e,n=l.formulas.apart===e;for(let o of["pour","pipe"])l.formulas[o]===e&&ct(o,void 0);n&&await ds(),t&&h({view:n?"formulas":"set-up",typed:void 0})}async function ua(e){let{file:t}=l.formulas.apart;await B_()&&W("run",`/${e}/formula`,t)}var I_=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Ud=e=>Jd(I_(e));async function zd(e,t){let{$schema:n,...o}=JSON.parse((await he(e)).text);await Jd({...o,name:t},e)}async function Jd(e,t){let n=Et(String(e.name),".formula.json"),{file:o}=await pt({kind:Ln,name:n,text:G(e),from:t});await ei(o)}var W_=30,H_=1200,qd=0,ca=!1,da=!1;function ma(e,t,n){let o=t==="mesh"?l.mesh:void 0;h({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),ha()}var ht=()=>h({mould:void 0,mesh:void 0}),Zn=(e,t,n)=>ma(Bo(Me,e),t,n);async function Kd(e,t){let n=await Oe(Me,e,t?crypto.randomUUID():e),o=String(n.now.name??e);t&&v(n,{now:{...n.now,name:""}}),ma(n,"form",t?`A copy of ${o}`:`Change ${o}`)}async function Gd({id:e,file:t,text:n}){let o=t?await Oe(Me,t,e):Bo(Me,JSON.parse(n),e);ma(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var B=()=>l.mould,D=()=>B().open.now;function ce(e,t){j_(e),ge(B().open,C(D(),e,t))}var pa="",Vd=0;function j_(e){let t=performance.now(),{past:n}=B();(e!==pa||t-Vd>H_||!n.length)&&v(B(),{past:[...n,D()]}),v(B(),{future:[]}),[pa,Vd]=[e,t]}function Yd(){let{past:e,future:t,open:n}=B(),o=e.at(-1);o&&(v(B(),{past:e.slice(0,-1),future:[...t,n.now]}),Zd(o,"Undone"))}function Qd(){let{past:e,future:t,open:n}=B(),o=t.at(-1);o&&(v(B(),{past:[...e,n.now],future:t.slice(0,-1)}),Zd(o,"Redone"))}function Zd(e,t){pa="",h({typed:void 0}),ge(B().open,e),E(t)}var N_=["name","note","owned","unmould_after"];function fa(e){let t=D(),n=Object.keys({...e,...t}).filter(a=>e?.[a]!==t[a]);(!e||n.some(a=>!N_.includes(a)))&&v(B(),{is_old:!0});let i=n.some(a=>B().complaint?.field===`/${a}`),s=n.some(a=>!["name","note"].includes(a));(B().is_old||i||s)&&ha()}function ha(){clearTimeout(qd),qd=window.setTimeout(()=>{U_()},W_)}async function U_(){if(ca)return void(da=!0);let{mould:e}=l;if(!e)return;let t=e.open.now;if(!(!et(t,"shape")&&!et(t,"mesh"))){if(Lo(t).length)return v(e,{complaint:void 0});ca=!0;try{let n=Me.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Un(o);e.open.now===t&&v(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof y))throw n;e.open.now===t&&ga(n)}finally{ca=!1,da&&ha(),da=!1}}}function ga(e){let{field:t,problem:n,remedy:o,keep:i,entry:s}=e.complaint,a=t?`${n}; ${o}`:e.message;v(B(),{complaint:{field:zi(D(),t),line:a,keep:i&&{...i,at:zi(D(),i.at)},about:s===void 0?void 0:zi(D(),`${t}/${s}`)}})}var ps=e=>Object.values(l.formulas).includes(e),ti=e=>Object.values(l.beside).includes(e),Xd=e=>`${String($(e,"/pour/formula"))}
${String($(e,"/pipe/formula"))}`;function z_(e,t){$(e,"/pour/mould")!==$(t,"/pour/mould")&&nt(),Xd(e)!==Xd(t)&&Ut(),Y(),zo()}var J_=Y;function q_(e,t){for(let n of["pour","pipe"]){if(l.formulas[n]!==e)continue;let o=`/${n}/formula`,i=s=>String($(s,o)??"").endsWith(Ee(t))?C(s,o,e.file):s;Ir(l.run,i),i(l.run.now)!==l.run.now&&ge(l.run,i(l.run.now))}}async function V_(e){e===l.run?(Bn(),localStorage.removeItem("run"),h({view:"runs"})):e===l.mould?.open?ht():ti(e)?Rc(e):await Nd(e),await Nt(),l.run.file&&Y()}function ep(){Xe("edited",({file:e,before:t})=>{e===l.run?z_(t,e.now):ps(e)||ti(e)?J_():e===l.mould?.open&&fa(t)}),Xe("gave_way",({file:e})=>{if(e===l.mould?.open)return fa();e===l.run&&(nt(),Ut().then(Y)),Y()}),Xe("left_deleted",({file:e})=>{V_(e)}),Xe("unwritten",({file:e})=>{e===l.run?ot():(ps(e)||ti(e))&&Y()}),Xe("conflict",({file:e})=>{(ps(e)||ti(e))&&h({is_old:!0})}),Xe("renamed",({file:e})=>{e===l.run&&(localStorage.setItem("run",e.file),nt(),Ut()),Y()}),Xe("copied",({file:e,from:t})=>{ps(e)&&q_(e,t),ti(e)&&Dc(e,t),e===l.run&&(localStorage.setItem("run",e.file),jn().then(Y))})}var wn=r`<span aria-hidden="true">⚠</span> Danger`;function ni(e,t="",n){let o=qt(e,n);return o.length?r`<div class="dangers" id=${t||u}>
    ${o.map(i=>r`<p class="danger"><strong>${wn}</strong> ${i}</p>`)}
  </div>`:u}function qt(e,t){let n=e==="pour"?"pipe":"pour";return l.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function tp(){let e=qe(l.view)||Uo()==="apart",t=l.dangers.run.map(({text:n})=>({from:e?`In the run "${String(l.run.now.name??l.run.file)}": `:"",text:n}));return[...l.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var np=()=>tp().length>0;function op(){let e=tp(),t=Y_();return!e.length&&!t?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?r`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>r`<p class="danger"><strong>${wn}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${t?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${K_()?r`<button type="button" @click=${G_}>To the question</button>`:u}
          </div>`:u}
  </section>`}var K_=()=>Rt(Uo())!==void 0&&!qe(l.view);function G_(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function Y_(){if(!l.run.file||l.view==="reading")return"";let e=Rt(Uo());return e&&hn(e)?`${e.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:e?`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:l.is_old&&l.changed_beside?`${l.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}function Xn(e){let{pieces:t,batches:n,batch_limits:o,around:i,...s}=e,[a]=n,{pour:c,pipe:d,dust:p,lye_pot:m,bottles:_}=a;return{...s,pour:c,pipe:d,dust:p,lye_pot:m,bottles:_,batch:a,place:"batches.0",whippings:d?.whippings??[],whole:e}}var ie=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,Q_=e=>e.cut?["loaf","loaves"]:["cast","casts"];function gt(e,{pieces:t,casts:n}){let o=e.cut?ie(t,"bar"):ie(t,"piece");return n===t?o:`${o} from ${ie(n,...Q_(e))}`}var Z_=e=>e===1?"once":`${e} times`,_a=e=>e.batches.length>1,be=e=>e.pieces.batches>1;function oi(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function ee(e){return be(e.whole)?`one batch, ${gt(e.whole,e.batch)}`:""}var ip=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function $a(e,t){return ip(e)?`${gt(e.whole,t)}${t.count>1?`, whipped ${Z_(t.count)}`:""}`:""}function ms(e,t){let n=$a(e,t);return n&&`one whipping: ${n}`}var sp=e=>be(e.whole)||ip(e),fs=(e,t)=>`${ie(e,"filling")} of ${ie(t,"cavity","cavities")}`;var rp=M`<path class="wall" d="M30 10l8 52h44l8-52" />`,wa={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:M`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${rp}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:M`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:M`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${rp}<path class="measure" d="M20 10h80" />`}};var ba=e=>`term ${e}`;function St(e){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${l.open.has(ba(e))?"true":"false"}
    aria-label="What ${wa[e].name} means"
    @click=${()=>dt("open",ba(e))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function rt(e){if(!l.open.has(ba(e)))return u;let{name:t,words:n,drawing:o}=wa[e];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${t}</b>: ${n}</span
    ></span
  >`}var eo=e=>r`<span class="term">${St(e)}${rt(e)}</span>`;var gs=28.349523125,cp=25.4,X_=29.5735295625;function _t(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function x(e,t){return e$(_t(e,t))}var e$=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Ke(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${_t(e,t)} %`:ya(e)?"just below 0 %":"0.0 %"}var ya=e=>e<0||Object.is(e,-0),dp=e=>Math.abs(e-Math.round(e))<1e-6;function ap(e){return e?[0,1,2,3].find(t=>dp(e*10**t))??3:0}function lp(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function t$(e){return[0,1,2].find(t=>e.every(n=>dp(n*10**t)))??3}function _s(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function ye(e,t){let n=s=>e[`${t}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-t$([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var pp=.001;function hs(e,t,n,o,i=1e-9){let s=10**n;return _t(o==="nearest"?e/t:Math.floor((e+i)/t*s)/s,n)}var up=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function n$(e){if(!up.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return up.find(t=>Math.abs(t*gs-e)<.6*pp)}function te(e,t,n="nearest"){let o=t.scale_step_g||.1,i=n$(o),s=Math.min(.6*pp,o/2),a=i?hs(t.g,1,lp(o),n):hs(t.g,1,ap(o),n,s),c=i?hs(t.g,gs,ap(i),n,s):hs(t.g,gs,lp(o/gs),n),[d,p]=[`${t.g_text??a} g`,`${t.oz_text??c} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[p,d]:_s(e,d,p)}var O=(e,t,n=1,o="nearest")=>te(e,{g:t,scale_step_g:10**-n},o);function $e(e,t,n=1){return _s(e,`${_t(t,n)} ml`,`${_t(t/X_,2)} US fl oz`)}function pe(e,t){return _s(e,`${x(t,1)} mm`,o$(t))}function o$(e){let t=Math.round(Math.abs(e)/cp*32),n=e<0&&t?"-":"",o=t%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(t/32),a=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",a].filter(Boolean).join(" ")} in`}var va=([e])=>e,T=([e,t])=>t?`${e} (${t})`:e;function mp(e,t){return _s(e,`${_t(t,0)} \xB0C`,`${_t(t*1.8+32,0)} \xB0F`)}function to(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??cp;return n*o}function $t(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var no=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function oo(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function Vt(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}var fp=e=>e.goes_into==="lye",hp=({role:e})=>e==="alkali",i$=e=>hp(e)?"down":"nearest",bn=(e,t)=>te(e,t,i$(t));function $s(e){let t=e.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>fp(i)),n=({one:i})=>i.role==="water",o=({one:i})=>hp(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function gp(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!fp(t))}function io(e,t=()=>{}){if(!e.theirs)return u;let n=hn(e),o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{mc(e),t()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?r`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>fc(e)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>pc(e)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function so(e){if(e.theirs||!e.set_aside||Xi(e)&&!e.is_taken)return u;let t=()=>{Xi(e)&&jt(),hc(e)};return r`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?r`<button type="button" @click=${()=>cc(e)}>Close</button>`:u}
    </div>
  </section>`}var Pt={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},ws=e=>(...t)=>({_$litDirective$:e,values:t}),ro=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:s$}=ku,_p=e=>e;var wp=e=>e.strings===void 0,$p=()=>document.createComment(""),ao=(e,t,n)=>{let o=e._$AA.parentNode,i=t===void 0?e._$AB:t._$AA;if(n===void 0){let s=o.insertBefore($p(),i),a=o.insertBefore($p(),i);n=new s$(s,a,e,e.options)}else{let s=n._$AB.nextSibling,a=n._$AM,c=a!==e;if(c){let d;n._$AQ?.(e),n._$AM=e,n._$AP!==void 0&&(d=e._$AU)!==a._$AU&&n._$AP(d)}if(s!==i||c){let d=n._$AA;for(;d!==s;){let p=_p(d).nextSibling;_p(o).insertBefore(d,i),d=p}}}return n},Kt=(e,t,n=e)=>(e._$AI(t,n),e),r$={},bs=(e,t=r$)=>e._$AH=t,bp=e=>e._$AH,ys=e=>{e._$AR(),e._$AA.remove()};var H=ws(class extends ro{constructor(e){if(super(e),e.type!==Pt.PROPERTY&&e.type!==Pt.ATTRIBUTE&&e.type!==Pt.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!wp(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===Pe||t===u)return t;let n=e.element,o=e.name;if(e.type===Pt.PROPERTY){if(t===n[o])return Pe}else if(e.type===Pt.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return Pe}else if(e.type===Pt.ATTRIBUTE&&n.getAttribute(o)===t+"")return Pe;return bs(e),t}});var yn,ii=[],si=()=>yn!==void 0;function We(e,t,n,o){if(!yn||yn.some(s=>s.id===n))return;let i=ii.flatMap(({part:s})=>s??[]);yn.push({of:e,at:t,id:n,label:o,part:i.at(-1)??"",folds:ii.flatMap(({fold:s})=>s??[])})}function Ge(e,t){ii.push(e);try{return t()}finally{ii.pop()}}var yp=()=>{},vp=e=>{yp=e},vs,a$=()=>[l.run.now,...Object.values(l.formulas).map(e=>e.now),...Object.values(l.beside).map(e=>e.now),l.formulas.apart,l.plan,l.fats,l.files];function lo(){if(si())return[];let e=a$();return vs?.of.length===e.length&&e.every((n,o)=>n===vs.of[o])||(vs={of:e,wanted:l$()}),vs.wanted}function l$(){yn=[],ii=[];try{return yp(),yn}finally{yn=void 0}}function kp(e){l.touched.has(e)||h({touched:new Set(l.touched).add(e)})}function xp(e,t){if(l.has_asked)return!1;let n=lo().filter(o=>o.of===e&&(o.at===t||o.at.startsWith(`${t}/`)));return n.length>0&&n.every(o=>!l.touched.has(o.id))}var se=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function Ye(e,t){let n=l.complaint;if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return At(e)&&!xp(e,n.field)?Z(n):void 0}function ve(e,t){return l.complaint?.field===t?Ye(e,t):void 0}function At(e){let t=l.complaint,n=Wn(e)?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function u$(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(g(e,n)??{}).length>1?t:n}function vn(){let e=l.complaint;if(e)for(let t of["run",...ne,...we])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Ye(t,n)&&document.getElementById(se(t,n));if(o)return o}}function c$(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=d$(e,n);return o&&no(t)?`${t.trim()} ${o}`:t}function d$(e,t){return $t(g(t,e.at))||e.unit||""}var He=(e,t,n)=>t||n?r`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:u,ka=!1;addEventListener("pointerdown",()=>ka=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>ka=!1,!0);var p$=()=>h({typed:void 0});function xa(e){let{id:t}=e.target,n=()=>{p$(),kp(t)};ka?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var m$=e=>typeof e=="string"&&e.startsWith("?")?e.slice(1).trim():void 0,f$=({unit:e=""},t)=>[e.replace("cm2","cm\xB2"),t?"required":""].filter(Boolean).join(", ")||u;function f(e){let t=e.of??"run",n=se(t,e.at),o=g(t,e.at),i=m$(o),s=l.typed?.key===n,a=s?l.typed.text:o===void 0||i!==void 0?"":String(o),c=i!==void 0||a.trim()===""&&(!e.optional||e.is_due===!0);c&&We(t,e.at,n,e.label);let d=Ye(t,e.at),p=w=>{let b=w.target.value;h({typed:{key:n,text:b}});let R=c$(e,b);W(t,R===void 0&&e.takes_part?u$(t,e.at):e.at,R)},_=(s&&typeof o=="string"&&o!==a?`taken as ${o}`:"")||e.hint||i;return r`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${d?"wants":""}"
  >
    ${Ta(r`<label for=${n} data-said=${f$(e,c)}>${e.label}</label>`,e.term)}
    <input
      id=${n}
      aria-required=${e.optional&&!e.is_due?u:"true"}
      .value=${H(a)}
      @input=${p}
      @blur=${xa}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${d?"true":"false"}
      aria-describedby=${[d||_?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${He(n,d,_)} ${e.term?rt(e.term):u}
  </div>`}var Ta=(e,t)=>t?r`<div class="labelled">${e}${St(t)}</div>`:e;function ks(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var N=e=>()=>document.getElementById(e),me=(e,t)=>N(se(e,t)),ri=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),h$=()=>document.activeElement;function de(e){requestAnimationFrame(()=>ks(e()))}function uo(e,t,n,o=h$){E(t),xc(e,n),de(o)}function L(e,t,n,o,i){uo(e,t,s=>C(s,n,o),i)}var Gt=(e,t,n)=>`${se(e,t)}-${n}`;function I(e,t){let n=ve(e,t);return n?r`<p id=${se(e,t)} class="complaint" tabindex="-1">${n}</p>`:u}var Tp=(e,t,n)=>t.map(([o,i])=>r`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function re(e,t,n,o){return r`<div class="choice" role="group" aria-label=${e}>${Tp(t,n,o)}</div>`}function k({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:a,puts:c,then:d,hint:p,optional:m,term:_}){let w=i?Gt(e,n,t.replaceAll(/\W+/g,"-")):se(e,o),b=s===void 0&&!m;b&&We(e,o,w,t);let R=i?void 0:ve(e,o),J=Be=>{if(Be===s)return;let rn=a.find(([pg])=>pg===Be)[1];L(e,`${t}: ${rn}`,n,c(Be),d&&me(e,d(Be)))};return r`<div class="field asked ${R?"wants":""}">
    ${Ta(r`<p class="question" id="${w}-label" data-said=${b?"required":u}>${t}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${w}
      tabindex="-1"
      aria-labelledby="${w}-label"
      aria-describedby=${R||p?`${w}-said`:u}
    >
      ${Tp(s,a,J)}
    </div>
    ${He(w,R,p)} ${_?rt(_):u}
  </div>`}function Ra(e,t,n,o){let i=se("run",e),s=ve("run",e),a=()=>L("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${a}
      >
        ${t}
      </button>
    </div>
    ${He(i,s)}`}function Te({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:s,chosen:a,take:c}){let d=se(t,n),p=Ye(t,n),m=a??F(t,n);!m&&!s&&We(t,n,d,e);let _=!m||o.some(([R])=>R===m),w=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${d} data-said=${m||s?u:"required"}>${e}</label>
    <select
      id=${d}
      aria-required=${s?u:"true"}
      @change=${R=>{let J=R.target.value;c?c(J):W(t,n,J||!s?J:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${d}-said`:u}
    >
      ${w.filter(([R])=>R||s||!m).map(([R,J])=>r`<option value=${R} .selected=${H(R===m)}>${J}</option>`)}</select
    >${He(d,p)}
  </div>`}function co(e,t,n=[]){let o=Fe(F("run",t),n);return Te({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Dt({of:e="run",at:t,name:n,title:o,add:i,blank:s,body:a}){let c=Gt(e,t,"part"),d=Gt(e,t,"add"),p=()=>Ge({part:o},a);return g(e,t)===void 0?r`<p class="choice">
      <button type="button" id=${d} @click=${()=>L(e,`${o} added`,t,s,ri(c))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${c} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>L(e,`${o} removed`,t,void 0,N(d))}
      >
        Remove
      </button>
    </div>
    ${I(e,t)} ${p()}
  </div>`}var Rp=(e,t)=>`folded ${e} ${t}`,po=(e,t)=>ue(Rp(e,t));function A({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:s}){let a=Rp(e,t);if(si())return r`${Ge({fold:a},s)}`;(i||n.some(p=>Ye(e,p)))&&ue(a);let c=l.open.has(a);return r`<details .open=${c}>
    <summary @click=${p=>{p.preventDefault(),dt("open",a)}}>${o}</summary>
    ${c?r`<div class="folded">${s()}</div>`:u}
  </details>`}var S=({of:e="run",at:t})=>_e(e,t),U=({of:e="run",at:t},n)=>Gt(e,`${t}/${n}`,"item"),xs=({of:e="run",at:t},n,o)=>Gt(e,`${t}/${n}`,o),g$=({of:e="run",at:t})=>se(e,t);function ai(e,t,n,o){let{of:i="run",at:s,stays:a,and:c=d=>d}=e;uo(i,t,d=>c(C(d,s,n.length||a?n:void 0),n.length),o)}function V(e,t,n){let o=S(e);ai(e,`${n} added`,[...o,t],ri(U(e,o.length)))}function _$(e,t,n){let o=S(e).filter((a,c)=>c!==t),i=Math.min(t,o.length-1),s=o.length>(e.least??0);ai(e,`${n} removed`,o,s?N(xs(e,i,"drop")):me(e.of??"run",e.at))}function $$(e,t,n,o){let i=[...S(e)],[s]=i.splice(t,1);i.splice(t+n,0,s);let a=n<0?"earlier":"later",d=t+n===0||t+n===i.length-1?n<0?"later":"earlier":a;ai(e,`${o} moved ${a}`,i,N(xs(e,t+n,d)))}function Q(e,t,n){let o=S(e).length-1,i=o>=(e.least??0),s=e.in_order&&o>0;if(!i&&!s)return u;let a=(c,d,p)=>r`<button
      type="button"
      id=${xs(e,t,d)}
      ?disabled=${p}
      aria-label="${n} ${d}"
      @click=${()=>$$(e,t,c,n)}
    >
      ${c<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${a(-1,"earlier",t===0)} ${a(1,"later",t===o)}`:u}
    ${i?r`<button
            type="button"
            id=${xs(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>_$(e,t,n)}
          >
            ×
          </button>`:u}
  </div>`}function K(e,t,n){let o=g$(e),i=ve(e.of??"run",e.at);return r`${He(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${t}
    </button>`}function Sa(e){let t=F(e,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${f({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${f({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    ${v$(e)}
    ${A({of:e,name:"density",pointers:["/measured_density"],summary:`Measured density${t&&`: ${t}`}`,body:()=>f({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var w$=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],Sp={after:"",mass:""},Pp=3,b$={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:Pp},()=>Sp)}}};function y$(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function v$(e){let t=y$(e);return r`${k({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:w$,puts:o=>({...X(e,"",["drying","water_lost_in_cure"]),...b$[o]})})}
  ${t==="share"?r`<div class="row">
          ${f({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${t==="law"?r`<div class="row">
          ${f({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${f({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${t==="weighed"?k$(e):u}`}function k$(e){let t={of:e,at:"/drying/weighings",least:Pp};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${S(t).map((n,o)=>r`<div class="row named" id=${U(t,o)}>
          ${f({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${f({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${Q(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${K(t,"One more weighing",()=>V(t,Sp,"weighing"))}`}var x$=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Ts=e=>zt(e).map(t=>[t.id,t.name]),Ap=["unsaid","Not given"],Dp=["none","Holds none"],Mp=e=>e===void 0?"unsaid":e==="none"?"none":"some",T$=e=>t=>t==="some"?e:t==="none"?"none":void 0;function Op(e,t){return Pa(e,`${t}/contains_fat`,[Ap,Dp,["some","Holds fat"]],Ts(e))}function Pa(e,t,n,o){let i=Mp(g(e,t)),s=n.some(([a])=>a===i)?i:void 0;return r`${k({of:e,question:"Fat in it",at:t,chosen:s,answers:n,puts:T$({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${Te({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${f({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:u}`}var R$=[Ap,Dp,["some","Holds acid"],["typed","By what it takes up"]],S$={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Aa(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":Mp(g(e,n));return r`${k({of:e,question:"Acid in it",at:n,chosen:o,answers:R$,puts:i=>S$[i]})}
  ${o==="some"?r`<div class="row">
          ${Te({label:"Which acid",of:e,at:`${n}/acid`,answers:x$.map(i=>[i,i]),unsaid:"choose ..."})}
          ${f({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${f({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Da(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Da(e,t,n){let o=g(e,t)===!0?"yes":"no";return k({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Cp={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function Lp(e,t){let n=Go(e);if(!Array.isArray(n)||!n.some(c=>c.id===t))return u;let i=_e("own_fats","/fats").findIndex(c=>c.id===t);if(!(i>=0&&l.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{P$(e,t)}}>Change this fat of my own</button>`;let a=`/fats/${i}`;return A({of:"own_fats",name:t,pointers:[a],summary:`My own fat, in ${l.beside.own_fats.file}`,body:()=>Ge({part:F("own_fats",`${a}/name`)||"Your own fat"},()=>D$(a))})}async function P$(e,t){await es(e),po("own_fats",t);let n=_e("own_fats","/fats").findIndex(o=>o.id===t);de(N(`f-own_fats-fats-${n}-name`))}var A$=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function D$(e){let t=(n,o,i,s=!1)=>f({of:"own_fats",label:o,at:`${e}/${n}`,hint:i,optional:s});return r`${I("own_fats",e)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${t("name","Name of the fat")} ${t("source","The document","Supplier, name, date.")}
      ${t("lot","Lot",void 0,!0)}
    </div>
    ${k({of:"own_fats",question:"What it is",at:`${e}/kind`,chosen:F("own_fats",`${e}/kind`)||void 0,answers:A$,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${M$(`${e}/saponification_value`)}
    <div class="row">
      ${t("inci","INCI name")}
      ${t("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${t("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${A({of:"own_fats",name:`${e} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${e}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>O$(e)})}`}function M$(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"?"range":"one",o=(i,s,a=!1)=>f({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:a,unit:"mg KOH/g"});return r`${k({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:e,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(e,"Saponification value"):r`${o(`${e}/low`,"Lowest")} ${o(`${e}/typical`,"Typical",!0)}
            ${o(`${e}/high`,"Highest")}`}
    </div>`}function O$(e){let t=(o,i,s,a)=>{let c=`${e}/${o}`,d=g("own_fats",c)!==void 0,p=()=>L("own_fats",`${i}: ${d?"left out":"added"}`,c,d?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${d?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${d?"Leave out":"Add"}
        </button>
      </div>
      ${d?r`${I("own_fats",c)}${a()}`:u}
    </div>`},n=(o,i,s,a=!1)=>f({of:"own_fats",label:i,at:`${e}/${o}`,unit:s,number:a,short:!0});return r`<div class="items">
      ${t("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${e}/iodine_value`)=="object"?r`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${t("density","Density when molten",{at:"",low:"",high:""},()=>r`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${t("melting_range","Melting range",{low:"",high:""},()=>r`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${F$(`${e}/fatty_acids`)}
    <div class="row">
      ${f({of:"own_fats",label:"Unsaponifiable, at most",at:`${e}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${f({of:"own_fats",label:"Note on the fat",at:`${e}/note`,optional:!0})}
    </div>`}var Fp=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function F$(e){let t=Object.keys(g("own_fats",e)??{}),n=Fp.filter(([a])=>!t.includes(a)),o=a=>Fp.find(([c])=>c===a)?.[1]??a,i=a=>`${e}/${Ae(a)}`,s=a=>{let c=Array.isArray(g("own_fats",i(a))),d=(p,m)=>f({of:"own_fats",label:`${o(a)}, ${m}`,at:`${i(a)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${c?r`${d(0,"lowest")} ${d(1,"highest")}`:f({of:"own_fats",label:o(a),at:i(a),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(a)}"
        @click=${()=>L("own_fats",`${o(a)} removed`,t.length>1?i(a):e,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${I("own_fats",e)} ${t.map(s)}
    <div class="row">
      ${Te({label:"Add a fatty acid",of:"own_fats",at:`${e}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:a=>a&&L("own_fats",`${o(a)} added`,i(a),["",""])})}
    </div>`}var C$=["tsp/lb","tbsp/lb","tsp/kg"],Rs=["%","g/kg",...C$].flatMap(e=>[`${e} of fats`,`${e} of batter`]),Ep=[...Rs,"% of finished soap","g/kg of finished soap"];function Bp(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function Ss(e,t,n,o,i=!1){let s=se(e,t),[a,c]=Bp(F(e,t),o),d=l.typed?.key===s?l.typed.text:a;!i&&!(a.trim()&&c)&&We(e,t,s,a.trim()?`${n}: of what`:n);let m=Ye(e,t),_=(b,R)=>{let J=`${b.trim()} ${R}`.trim();W(e,t,i&&!b.trim()?void 0:J),z()},w=b=>{let R=b.target.value,[J,Be]=Bp(R,o);h({typed:{key:s,text:R}}),_(J,Be||c)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${H(d)}
        @input=${w}
        @blur=${xa}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${b=>_(d,b.target.value)}
      >
        <option value="" .selected=${H(c==="")}>of what?</option>
        ${o.map(b=>r`<option value=${b} .selected=${H(b===c)}>${b}</option>`)}
      </select>
    </div>
    ${He(s,m)}
  </div>`}function L$(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var B$=.01+1e-9;function Ps(e,t){let{sum:n,unread:o}=L$(t),i=a=>`${String(Math.round(a*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=B$?`${e} add to ${i(n)}.`:s>0?`${e} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-s)} too much.`}var Ip=(e,t)=>zt(e).find(n=>n.id===t)?.name??t,li=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),As=e=>S(li(e));function Ca(e){let t=As(e),n=l.picking?.of===e&&l.picking.row===t.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>E$(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?Ps("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${t.length?u:We(e,"/fats",se(e,"/fats"),"The fats")}
    ${n?Hp(e):K(li(e),"Add a fat",()=>Wp(e,t.length))} ${q$(e)}
  </section>`}function E$(e,t,n){let o=`/fats/${t}`,i=Ip(e,String(n[t].fat??""))||"Which fat?",s=ve(e,`${o}/fat`)??ve(e,o),a=l.picking?.of===e&&l.picking.row===t;return r`<li class="formula-row" id=${U(li(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${se(e,`${o}/fat`)}
        aria-expanded=${a?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>a?Ma():Wp(e,t)}
      >
        ${i}
      </button>
      ${f({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${Q(li(e),t,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${a?Hp(e):u}
    ${Lp(e,String(n[t].fat??""))}
    ${A({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${j$(n[t])}`,body:()=>z$(e,t)})}
  </li>`}function Wp(e,t){h({picking:{of:e,row:t,text:""}}),de(N("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Ma(){let e=l.picking;h({picking:void 0}),e&&de(me(e.of,e.row<As(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function Oa(e,t){let{row:n}=l.picking,o=As(e);h({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};ai(li(e),`${Ip(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],me(e,`/fats/${n}/share`))}var ui=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function Fa(e,t){let n=ui(t).split(/\s+/).filter(Boolean),o=i=>n.every(s=>ui(i).includes(s));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function Hp(e){let{row:t,text:n}=l.picking,o=As(e).map(m=>m.fat),i=I$(e,n),s=i.filter(m=>!o.includes(m.id)||o[t]===m.id),a=s.find(m=>m.id===l.picking.lit),c=m=>{h({picking:{of:e,row:t,text:m.target.value}})},d=m=>{let _=a?s.indexOf(a)+m:m>0?0:s.length-1,w=s[(_+s.length)%s.length];w&&(h({picking:{of:e,row:t,text:n,lit:w.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${w.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Ma(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),d(m.key==="ArrowDown"?1:-1));let _=s.find(b=>ui(b.name)===ui(n.trim())),w=a??(s.length===1?s[0]:_);m.key==="Enter"&&w&&Oa(e,w.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
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
          @input=${c}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Ma}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[t]!==m.id,w=Fa(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===a?"lit":""}
          ?disabled=${_}
          aria-selected=${m===a||o[t]===m.id?"true":"false"}
          @click=${()=>Oa(e,m.id)}
        >
          ${m.name}${w===m.name||!w?"":`, ${w}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{W$(e,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function I$(e,t){let n=zt(e).filter(a=>Fa(a,t)!==void 0),o=t.split(/\s+/).filter(a=>a.length>2);if(n.length||o.length<2)return n;let i=a=>o.filter(c=>Fa(a,c)!==void 0).length,s=Math.max(...zt(e).map(i));return s?zt(e).filter(a=>i(a)===s):[]}async function W$(e,t){if(!await es(e))return;let o=t.trim(),i=H$(o,[...l.fats,..._e("own_fats","/fats")]),s=_e("own_fats","/fats").length;W("own_fats",`/fats/${s}`,{...Cp,id:i,name:o}),Oa(e,i),po("own_fats",i),de(me("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function H$(e,t){let n=ui(e).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!t.some(s=>s.id===i))return i}}function j$(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var N$=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],U$={published:void 0,one:"",range:{low:"",typical:"",high:""}};function z$(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(e,`/fats/${t}/confirmed`)!==void 0,a=(c,d)=>f({label:c,of:e,at:d,number:!0,short:!0});return r` ${f({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${k({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:N$,puts:c=>U$[c],hint:J$(e,F(e,`/fats/${t}/fat`))})}
  ${i==="one"?r`<div class="row">${a("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${a("Lowest",`${n}/low`)} ${a("Typical",`${n}/typical`)} ${a("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Da(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function J$(e,t){let n=zt(e).find(a=>a.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function q$(e){let t=Go(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=F(e,"/own_fats");return A({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>f({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var V$=e=>ne.includes(e);function Ds(){let e=l.complaint;return!e?.field||e.lye_heavy?!1:lo().some(({of:t,at:n})=>At(t)&&(n===e.field||n.startsWith(`${e.field}/`)))}function ci(){let e=l.complaint?lo():[];return e.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${e.length}</p>
    <ul class="choice">
      ${e.map(t=>r`<li>
            <button type="button" @click=${()=>K$(t)}>
              ${t.part?r`<small>${t.part}</small> `:u}${t.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function K$({of:e,id:t,folds:n}){for(let o of n)ue(o);h({has_asked:!0}),V$(e)?(l.view!=="formula"||l.formula_of!==e)&&Ve(e):l.view!=="set-up"&&!(e==="own_fats"&&l.view==="formula")&&h({view:"set-up"}),requestAnimationFrame(()=>de(N(t)))}var jp="danger-of-superfat";function La(e,t){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${f({label:"Superfat (share of all fat left unsaponified)",of:e,at:"/superfat",unit:"%",term:"superfat",described_by:qt(e).length?jp:void 0})}
    </div>
    ${ni(e,jp)} ${G$(e)} ${tw(e,t)}
  </section>`}function G$(e){let t=_e(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return r`${k({of:e,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>Y$(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,s)=>Q$(e,i,s,t.length>1))}
  ${t.length>1?r`<p class="total" role="status">
          ${Ps("The two",t.map(i=>i.share))}
        </p>`:u}`}function Y$(e,t){let n=(o,i)=>({purity:"",...e.find(s=>s.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function Q$(e,t,n,o){let i=`/alkali/${n}`,s=String(t.alkali??""),a=ve(e,i)??ve(e,`${i}/alkali`);return r`<div class="formula-row">
    ${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row">
      ${o||t.share!=="100 %"?f({label:`${s}: share of the fats it saponifies`,of:e,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${f({label:`${s}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${A({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${Z$(t.purity_range)}`,body:()=>X$(e,i)})}
  </div>`}var Z$=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function X$(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return r`${k({of:e,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${f({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${f({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var ew={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function tw(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(ew);return r`${k({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:ow(t)})}
    <div class="row">${n.map(s=>nw(e,s))}</div>`}function nw(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?f({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?f({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):f({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function ow(e){if(!(!e||l.is_old))return`It now makes a strength of ${x(e.lye_strength_percent,1)} %; ${x(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${x(e.water_percent_of_fats,1)} % of the fats.`}function Yt(e,t,n){let o=iw(e,t);return A({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${rw(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${Np(e,`${t}/allergens`,"Allergen","Add an allergen",(i,s)=>aw(e,i,s))}
        ${f({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function iw(e,t){let n=_e(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Ba={name:"",share:""},sw={unsaid:void 0,one:"",many:[Ba]};function rw(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=a=>a==="many"&&o?[{...Ba,name:o}]:sw[a];return r`${k({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?f({label:"INCI name",of:e,at:t}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${Np(e,t,"INCI name","One more INCI name")}`:u}`}function aw(e,t,n){return k({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function Np(e,t,n,o,i){let s={of:e,at:t};return r`${S(s).map((a,c)=>r`<div class="row named" id=${U(s,c)}>
        ${f({label:`${n} ${c+1}`,of:e,at:`${t}/${c}/name`})}
        ${f({label:`Share ${c+1}`,of:e,at:`${t}/${c}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${c}`,c)??u} ${Q(s,c,String(a.name||`${n} ${c+1}`))}
      </div>`)}
  ${K(s,o,()=>V(s,Ba,n))}`}var lw=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:ww},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:mw},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:fw},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:hw}];function Ea(e){return lw.map(t=>{let n={of:e,at:`/${t.list}`},o=S(n),i=(s,a)=>r`<li class="formula-row" id=${U(n,a)}>
        ${cw(e,t,n,s,a)} ${t.row(e,`${n.at}/${a}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${t.aside}</p>`}
      ${K(n,t.add,()=>V(n,uw(t),t.add.replace("Add ","")))}
    </section>`})}function uw(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function cw(e,t,n,o,i){let s=`/${t.list}/${i}`,a=ve(e,s),c=String(o.name||`number ${i+1} of the ${t.list}`);return r`${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row named">
      ${f({label:"Name",of:e,at:`${s}/name`})}
      ${t.list==="liquids"?u:Ss(e,`${s}/rate`,"How much",Rs)}
      ${Q(n,i,c)}
    </div>`}function Up(e,t,n,o){let i=`${t}/goes_into`,s=g(e,i);return k({of:e,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function zp(e,t,n){let o=g(e,`${t}/stirred_in`);return r`${Up(e,t,pw,n)}
  ${g(e,`${t}/goes_into`)==="lye"||o!==void 0?k({of:e,question:"Stirred into the lye",at:`${t}/stirred_in`,chosen:String(o??""),answers:dw,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var dw=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],pw=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Ia(e,t,n){let o=(a,c,d)=>a?`${c}${String(a)}${d}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(a=>`${t}/${a}`);return A({of:e,name:`${t} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${f({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${f({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Ss(e,`${t}/limit`,"The most that the supplier's document allows",Ep,!0)}`})}function Wa(e,t,n,o){let i=(a,c)=>a===void 0?"":a==="none"?`no ${c}`:c,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return A({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${Op(e,t)} ${o?Aa(e,t):u}`})}var Ms=(e,t,n)=>Yt(e,t,String(n.name||"it"));function mw(e,t,n){return r`${zp(e,t,!0)}
    <div class="folds">${Wa(e,t,n,!0)} ${Ia(e,t,n)} ${Ms(e,t,n)}</div>`}function Jp(e,t,n){return A({of:e,name:`${t} place`,pointers:[`${t}/goes_into`,`${t}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>zp(e,t,!1)})}function fw(e,t,n){return r`<div class="folds">
    ${Ia(e,t,n)} ${Ms(e,t,n)} ${Jp(e,t,n)} ${Wa(e,t,n,!1)}
  </div>`}function hw(e,t,n){return r`${_w(e,t)}
    <div class="folds">
      ${Ia(e,t,n)} ${Ms(e,t,n)} ${Jp(e,t,n)} ${Wa(e,t,n,!0)}
    </div>`}var gw=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function _w(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return r`${k({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:a=>a==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${Te({label:"Which oil",of:e,at:`${n}/fat`,answers:Ts(e),unsaid:"choose ..."})}
            ${f({label:"Oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${k({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:gw,puts:a=>a,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var $w=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function ww(e,t,n){let o=(i,s,a)=>A({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:s,body:a});return r`${yw(e,t,n)}
    ${Up(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${kw(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>bw(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Aa(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>f({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Ms(e,t,n)}
    </div>`}function bw(e,t){let n=g(e,t)===!0?"ice":"liquid";return k({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function yw(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...X(e,t,["replaces","rate"]),[s]:""});return r`${k({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:vw,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${f({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?Ss(e,`${t}/rate`,"Rate",Rs):u}`}var vw=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function kw(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(c,d)=>f({label:c,of:e,at:`${n}/${d}`,unit:"%",short:!0});return r`${k({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:c=>c==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${Pa(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Ts(e)])}
          <div class="row">
            ${f({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${Te({label:"Built-in figures of",of:e,at:n,answers:$w.map(c=>[c,c]),unsaid:"choose ..."})}
        </div>`}`}var Ha=!1;function qp(e){let{plan:t,explanation:n}=l,o=n?.of!==t;return o&&!Ha&&Tw(),{workings:xw(n?.workings,e),complaint:n?.complaint,is_old:o}}function xw(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function Tw(){let{plan:e,planned:t}=l;if(!(!e||!t)){Ha=!0;try{let{how:n}=await Nu(t);h({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof y))throw n;h({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{Ha=!1}}}function P({key:e,label:t,shown:n,of:o,working:i,size:s="plain",note:a,term:c}){let d=l.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${c?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${d?"true":"false"}
      aria-controls=${d?p:u}
      @click=${()=>dt("open",e)}
    >
      <span class="name">${t}${a?r`<small>${a}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${l.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${d?"\u2013":"="}</span>
    </button>
    ${c?r`${St(c)}${rt(c)}`:u}
    ${d?r`<div class="sum" id=${p}>${i?Vp(i):ja(o)}</div>`:u}
  </div>`}var kn=(e,t,n)=>P({key:e,label:t,shown:["",""],of:n});function ja(e){let{workings:t,complaint:n,is_old:o}=qp(e);return t.length?r`<div class=${o?"old":""}>${t.map(Vp)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Vp({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:s}){let a=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${e}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.map(({name:c,value:d,from:p})=>r`<tr>
              <th scope="row">${c}</th>
              <td>${d}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${a?r`<p class="comes-to">${a}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var xn="/pipe/beads",Mt=`${xn}/tip`,Rw={of:"run",at:Mt},wt={at:`${xn}/moves`,in_order:!0},Na="\0own",Qp={tip:"",bead_to_opening:"",moves:[]},at=(e,t)=>({name:e,label:t,kind:"length"}),Kp={name:"count",label:"How many",kind:"count"},Gp=at("circle_radius","Radius of their circle"),Ua={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[at("diameter","Diameter"),at("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[at("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},at("start_radius","Radius at the start"),at("end_radius","Radius at the end"),at("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[at("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Kp,Gp,at("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Kp,Gp,at("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[at("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function Zp(e){return r`${Pw()} ${za()?nm(Rw):Mw()}
    ${f({label:"Bead \xF7 tip opening",at:`${xn}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${S(wt).map((t,n)=>Ew(t,n,e))}</div>
    ${Hw()}`}var za=()=>typeof g("run",Mt)=="object",Xp=()=>String(g("run",`${xn}/own_tips`)??g("studio","/own_tips")??"");function Sw(){let e=Xp(),t=e?la(e):[];return g("run",`${xn}/own_tips`)===void 0?[...t,...aa()]:t}function Pw(){let e=n=>n===Na?L("run","a tip of your own",Mt,{name:"",round:{radius:""}},tm):W("run",Mt,n),t=Sw().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${Te({label:"Tip",at:Mt,answers:[...t,[Na,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:za()?Na:void 0})}
  ${za()?u:A({name:"tips",pointers:[`${xn}/own_tips`],summary:"Tips of a file of your own",body:()=>f({label:"File of tips",at:`${xn}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var em=Gt("run",Mt,"own"),tm=ri(em);async function Aw(){let e=g("run",Mt);if(!await Hr())return;let t=_e("own_tips","/tips"),n=Dw(String(e.name).trim()||"My tip",t);Hn([["own_tips",o=>C(o,`/tips/${t.length}`,{...e,name:n})],["run",o=>C(o,Mt,n)]]),E(`${n} kept in ${l.beside.own_tips.file}`)}function Dw(e,t){for(let n=1;;++n){let o=n===1?e:`${e} ${n}`;if(![...t,...aa()].some(i=>i.name===o))return o}}function Mw(){let e=F("run",Mt),t=Xp();if(!e||!t||!la(t).some(o=>o.name===e))return u;let n=_e("own_tips","/tips").findIndex(o=>o.name===e);return n<0?r`<button type="button" @click=${()=>{Hr()}}>Change this tip of my own</button>`:nm({of:"own_tips",at:`/tips/${n}`})}var Yp=[["round","Round"],["star","Star"],["outline","Another outline"]],Os={x:"",y:""},Ow={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Os,Os,Os]};function nm({of:e,at:t}){let n=Yp.map(([s])=>s),o=n.find(s=>g(e,`${t}/${s}`)!==void 0),i=s=>({...X(e,t,n),[s]:Ow[s]});return r`<div class="part" id=${em} role="group" aria-label="My own tip">
    ${I(e,t)} ${Fw({of:e,at:t})}
    ${k({of:e,question:"Opening of the tip",at:t,is_told_elsewhere:!0,chosen:o,answers:Yp,puts:i})}
    ${o?Lw({of:e,at:t},o):u}
    ${A({of:e,name:"hand",pointers:[`${t}/hand`,`${t}/note`],summary:"Correction for your hand",body:()=>Cw({of:e,at:t})})}
    ${e==="run"?r`<button type="button" @click=${()=>{Aw()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${l.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var Fw=({of:e,at:t})=>e==="run"?f({label:"What you call the tip",at:`${t}/name`}):r`<p class="part-title">${F(e,`${t}/name`)}</p>`;function Cw({of:e,at:t}){let n=`${t}/hand`,o=i=>g(e,i)!==void 0;return r`<div class="row">
      ${f({of:e,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?f({of:e,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button type="button" @click=${()=>L(e,"correction removed",n,void 0,tm)}>
            Leave the correction out
          </button>`:u}
    ${f({of:e,label:"Note on the tip",at:`${t}/note`,optional:!0})}`}function Lw(e,t){if(t==="outline")return Bw(e);let{of:n,at:o}=e,i=(s,a)=>f({of:n,label:a,at:`${o}/${t}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${t==="round"?i("radius","Radius of the opening"):r`${f({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function Bw({of:e,at:t}){let n={of:e,at:`${t}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${S(n).map((o,i)=>r`<div class="row" id=${U(n,i)}>
          ${f({of:e,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${f({of:e,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${Q(n,i,`corner ${i+1}`)}
        </div>`)}
    ${K(n,"One more corner",()=>V(n,Os,"corner"))}`}function Ew(e,t,n){let o=Ua[String(e.move)],i=`${wt.at}/${t}`,s=`${t+1}. ${o?.words??String(e.move)}`;return r`<div class="part" id=${U(wt,t)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${Q(wt,t,s)}
    </div>
    ${I("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(a=>Iw(i,a))}
      ${f({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${Ww(t,n)}
  </div>`}function Iw(e,{name:t,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,a=o==="length"||o==="signed"?"mm":void 0;return f({label:n,at:`${e}/${t}`,unit:a,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function Ww(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==S(wt).length)return u;let i=o.length_mm>0?`${x(o.length_mm/10,1)} cm of bead`:"";return P({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:$e(l.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function Hw(){let e=o=>({move:o,...Object.fromEntries(Ua[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=se("run",wt.at),n=ve("run",wt.at);return S(wt).length||We("run",wt.at,t,"What the tip does"),r`${He(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:u}
    >
      ${Object.entries(Ua).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>V(wt,e(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var Re=()=>l.beside.studio!==void 0,di=({run:e})=>g("run",e),Ja=({studio:e})=>g("studio",e);function pi(e){return di(e)===void 0&&Re()?{of:"studio",at:e.studio}:{of:"run",at:e.run}}var Tn=e=>di(e)??Ja(e),Se=(e,t)=>f({...t,...pi(e)}),qa=e=>e===void 0||e===""||e!==null&&typeof e=="object"&&!Object.keys(e).length;function mi(e,t=""){return e===void 0||qa(e)?[]:e===null||typeof e!="object"||Array.isArray(e)?[[t,e]]:Object.entries(e).flatMap(([n,o])=>mi(o,`${t}/${Ae(n)}`))}function jw(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/")))$(e,n)!==void 0&&qa($(e,n))&&(e=C(e,n,void 0));return e}var im=(e,t)=>t.reduce((n,o)=>jw(C(n,o,void 0),o),e);function sm(e){let t=new Map;return e.flatMap(n=>mi(di(n)).flatMap(([o,i])=>{let s=n.studio+o,a=t.get(s)??g("studio",s);return qa(a)||String(a).startsWith("?")||a===i?(t.set(s,i),[[n.run+o,s,i]]):[]}))}async function Va(e){Re()||await Pc();let t=sm(e);Hn([["studio",n=>t.reduce((o,[,i,s])=>C(o,i,s),n)],["run",n=>im(n,t.map(([o])=>o))]]),E("Kept in the studio")}function Nw(e){let t=e.flatMap(o=>mi(Ja(o)).map(([i,s])=>[o.run+i,s]));Hn([["run",o=>t.reduce((i,[s,a])=>$(i,s)===void 0?C(i,s,a):i,o)]]),E("Said in this run only")}function Uw(e){let t=e.flatMap(n=>mi(di(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Hn([["run",n=>im(n,t)]]),E("Taken from the studio again")}var om=e=>mi(e).length>0;function mo(e,t){if(!Re())return u;let n=t.some(s=>om(di(s))),o=t.some(s=>om(Ja(s))),i=(s,a)=>r`<button type="button" aria-label="${e}: ${s}" @click=${a}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&sm(t).length?i("Keep in my studio",()=>{Va(t)}):u}
    ${n&&o?i("As in the studio",()=>Uw(t)):u}
    ${!n&&o?i("Otherwise in this run",()=>Nw(t)):u}
  </span>`}function Ka(e){let t=Object.keys(g("studio","/moulds_owned")??{}),n=l.files?.moulds;return t.find(o=>Fe(o,n)===Fe(e,n))??e}var fi=()=>Object.keys(g("studio","/cups")??{}),hi=()=>fi().length===1?{net:""}:fi().length?{cup:"",net:""}:{holds:"",net:""},rm="\0another";function gi(e,t="Cup holds"){let n=`${e}/holds`,o=fi();if(g("run",n)!==void 0||!o.length)return r`${f({label:t,at:n,unit:"ml",short:!0})}${o.length?zw(e):u}`;let i=a=>a===rm?L("run","Another cup",e,{...Ga(e),holds:""},me("run",n)):L("run",`Cup: ${a}`,e,{...Ga(e),cup:a}),s=a=>F("studio",`/cups/${Ae(a)}`);return Te({label:"Which cup",at:`${e}/cup`,answers:[...o.map(a=>[a,`${a}, ${s(a)}`]),[rm,"Another cup"]],unsaid:"choose ...",chosen:F("run",`${e}/cup`)||(o.length===1?o[0]:""),take:i})}function Ga(e){let{cup:t,holds:n,...o}=g("run",e)??{};return o}var zw=e=>r`<button type="button" @click=${()=>L("run","A cup of the studio",e,Ga(e))}>
    A cup of my studio
  </button>`;function lm(){return Re()?r`<div class="row">
    ${fi().map(e=>f({of:"studio",label:`${e} holds`,at:`/cups/${Ae(e)}`,unit:"ml",short:!0,optional:!0}))}
    ${Jw()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function Jw(){let e=()=>{let t=document.getElementById("new-cup"),n=t.value.trim()||am();t.value="",L("studio",`${n} added`,`/cups/${Ae(n)}`,"",me("studio",`/cups/${Ae(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${am()} />
    </div>
    <button type="button" @click=${e}>Add the cup</button>`}function am(){for(let e=1;;++e){let t=e===1?"weigh-cup":`weigh-cup ${e}`;if(!fi().includes(t))return t}}var qw=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]),Ya=e=>({run:`/${e}/temperatures`,studio:`/temperatures/${e}`});function Fs(e){let{run:t}=Ya(e);return A({name:t,pointers:[t],summary:"How warm",body:()=>r` <p class="hint">
          ${Re()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${mo("How warm",[Ya(e)])} ${I("run",t)} ${Vw(e)}`})}function Vw(e){let{run:t,studio:n}=Ya(e),o=c=>({run:`${t}/${c}`,studio:`${n}/${c}`}),i=l.units==="us"?"\xB0F":"\xB0C",s=(c,d,p=i)=>Se(o(c),{label:d,unit:p,optional:!0,takes_part:!0,short:!0}),a=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${Te({label:"The lye cools in",...pi(a),answers:qw,unsaid:"not given",optional:!0})}
  </div>`}var je=()=>$(l.run.now,"/pipe")!==void 0;function um(){let e=t=>{let n=C(t,"/pipe",{formula:"",fills_headspace:"",whip:hi()});return Re()?n:C(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};ue("set-up pipe"),uo("run","Topping added",e,N("lane-pipe"))}function Kw(e){let t=Object.keys($(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:C(o,i,void 0),e)}function Gw(){uo("run","Topping removed",Kw,N("topping-back"))}function cm(){let e=l.past.at(-1)?.run?.now;return!e||$(e,"/pipe")===void 0||je()?u:r`<button type="button" id="topping-back" @click=${Zi}>Bring the topping back</button>`}function Qa(){return r`${nb()} ${Fs("pipe")}
    <p class="choice"><button type="button" @click=${Gw}>Take the topping away</button></p>`}var Yw=["trials","beads","envelope"];function Za(e){return Yw.every(t=>g("run",`/pipe/${t}`)===void 0)&&We("run","/pipe",`${se("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${I("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Dt({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:hi()},body:Qw})}
      ${Dt({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:Zw})}
    </div>
    ${Dt({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:Qp,body:()=>Zp(e)})}
    ${e?eb(e):u}`}function Qw(){let e={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${S(e).map((t,n)=>r`<div class="row" id=${U(e,n)}>
            ${f({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${Q(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${K(e,"One more trial",()=>V(e,"","trial"))}
    <div class="row">
      ${f({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${gi("/pipe/trials/weigh_cup")}
    </div>
    ${I("run","/pipe/trials/weigh_cup")}`}function Zw(){let e="/pipe/envelope",t=g("run",`${e}/form`);return r`${k({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${f({label:"Diameter",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${f({label:"Height",at:`${e}/height`,unit:"mm",short:!0})}
      ${f({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Xw={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function eb(e){let t=e.visible_by;if(!t)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},a)=>P({key:`pipe.by.${i}`,label:Xw[i],note:o(a),shown:$e(l.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${tb(e)}`}function tb(e){let t=e.visible_by?.suggested_correction;if(!t||l.is_old)return u;let n=x(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&$(l.run.now,`${o}/correction`)!==t.correction,a=()=>L("run","correction kept",o,{correction:t.correction,trials:t.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${a}>Keep ${n} for my tip</button>`:u}`}function Xa(e){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${f({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${gi("/pipe/whip")}
    </div>
    ${I("run","/pipe/whip")}
    ${e?.loads?r`<p class="aside of-plan">${e.loads} bag loads.</p>`:u}`}function nb(){let e="/pipe/pace",t=(n,o,i,s=!1)=>f({label:n,at:`${e}/${o}`,unit:i,optional:s,short:!0});return A({name:"pace",pointers:[e],summary:"Piping speed",body:()=>Dt({at:e,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${t("Can be piped for","open_time","min")} ${t("To pipe one","time_per_piece","s")}
            ${t("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function ob(e,{at:t,figure:n}){let o=$(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function Cs(e,t,n){return t?r`<button type="button" @click=${()=>n(t.at,ob(e,t))}>It is really so: keep it</button>`:u}var Ls=e=>/^\s*0*[1-9]\d{0,8}\s*$/.test(e)?Number(e):void 0;function Bs(e,t,n){return r`<div class="field short">
    <label for=${e} data-said="required">Pieces to sell</label>
    <input
      id=${e}
      aria-required="true"
      .value=${H(t)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}var dm=e=>[...l.files?.runs??[],...l.files?.formulas??[]].find(t=>t.file===e)?.name||e;function Es(e){let t=e?.used_by??[];return t.length?r`<p class="aside">Used by ${oi(t.map(dm))}.</p>`:u}function Is(e){let t=e?.used_by??[];return t.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${oi(t.map(dm))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}function ib({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],a=-e.brim-2*n+i,c=a-s-n,d=[e.left-n,c,e.right-e.left+2*n,-e.floor+n-c],p=(m,_)=>M`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${d.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",jo(t,a))}${p("side",jo(e.loops))}
    </svg>
  </div>`}function fo(e,t=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!e)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,s=i.pockets[0];return r`${ib(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${T($e(l.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${T($e(l.units,i.total_ml))} together`:u},
      ${T(pe(l.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(a=>`By ${a.by} ${T($e(l.units,a.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(a=>r`<li>${a.text}</li>`)}
          </ul>`:u}`}var sb={mm:"in",g:"oz","\xB0C":"\xB0F"},rb={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Ws(e,t,n=""){let o=el(e);if(o)return o.unit??"";let i=$t($(D(),e));return rb[t]?.test(i)?i:n||(l.units==="us"?sb[t]??t:t)}var Hs=()=>h({typed:void 0}),ho=e=>`d${e.replaceAll("/","-")}`,el=e=>l.typed?.key===ho(e)?l.typed:void 0,js=e=>el(e)?.text??String($(D(),e)??"");function Qt(e){let{complaint:t}=B();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function tl(e,t,n,o){let{pointer:i}=e,s=a=>{let c=a.target.value,d=e.unit?Ws(i,e.unit,e.unit_before):"";h({typed:{key:ho(i),text:c,unit:d}}),ce(i,ab(e,c,d))};return r`<input
    id=${ho(i)}
    .value=${H(js(i))}
    @input=${s}
    @blur=${Hs}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${t??u}
    aria-invalid=${Qt(i)?"true":"false"}
  />`}function ab(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&no(t)?`${t.trim()} ${n}`:t}function Ne(e,t){let n=ho(e.pointer),o=Qt(e.pointer),i=lb(e.pointer)??e.hint,s=e.unit?` (${Ws(e.pointer,e.unit,e.unit_before)})`:"";return r`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${s}</label> ${tl(e,o||i?`${n}-said`:void 0,t)}
    ${He(n,o,i)}
  </div>`}function lb(e){let t=$(D(),e),n=el(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function Ns(e){let t=e.toLowerCase(),{file:n,shipped:o}=B().open,i=o?"":n;return l.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===t)?.file}async function _i(e){let{open:t}=B();try{if(await mt(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));h({files:await Ct()})}catch(n){if(!(n instanceof y))throw n;return ga(n)}l.run.file&&(nt(),Y()),e(t.file)}var Ot="/shape/points",pm=500,Zt=(e,t)=>[Ot,e,...t?[t]:[]].join("/"),mm=e=>Array.from({length:e.least},()=>({}));function fm(e){let t=Ie(D(),Ot),n=cb(),{complaint:o}=B(),i=o?.field===Ot&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(s=>r`<span
              >${s.label} (${Ws(Zt(-1,s.name),s.unit,hm(e,t.length,s.name))})</span
            >`)}
      </div>
      ${t.map((s,a)=>ub(e,a,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${t.length>=pm} @click=${()=>zs(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function ub(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=db(t),s=a=>{let{name:c,label:d,unit:p}=e.columns[a],m={label:d,pointer:Zt(t,c),unit:p,unit_before:hm(e,t,c)},_=`${d}, ${n.has(t)?o:`point ${t+1}`}`;return tl(m,i?`point-${t}-said`:void 0,pb(e,t,a),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>zs(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>gm(e,t)}>×</button>
    ${i?r`<p id="point-${t}-said" class="complaint">${i}</p>`:u}
  </div>`}function cb(){let e=[...Co(D()),...Ui(D())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function db(e){let{complaint:t}=B();return Qt(Zt(e))??(t?.about===Zt(e)?t.line:void 0)}function hm(e,t,n){let o=(i,s)=>$t($(D(),Zt(i,s)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function Us(e,t){queueMicrotask(()=>document.getElementById(ho(Zt(e,t)))?.focus())}function zs(e,t){let n=[...Ie(D(),Ot)];n.length>=pm||(n.splice(t,0,{}),Hs(),ce(Ot,n),Us(t,e.columns[0].name))}function gm(e,t,n=0){let o=Ie(D(),Ot).filter((i,s)=>s!==t);Hs(),ce(Ot,o.length?o:[{}]),Us(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function pb(e,t,n){let[o,i]=e.columns.map(({name:s})=>s);return s=>{let a=!js(Zt(t,o))&&!js(Zt(t,i));if(s.key==="Enter"&&s.shiftKey)zs(e,t+1);else if(s.key==="Enter"&&n===0)Us(t,i);else if(s.key==="Enter"&&t+1<Ie(D(),Ot).length)Us(t+1,o);else if(s.key==="Enter")zs(e,t+1);else if(s.key==="Backspace"&&a&&Ie(D(),Ot).length>1)gm(e,t,t>0?1:0);else return;s.preventDefault()}}var nl={weighings:[""]},ol=/\.(3mf|gltf|glb)$/i;function Js(e){let t=Wt(e);return t?{kind:e,points:mm(t)}:{kind:e}}var mb=()=>ce("/water",nl),bt=e=>et(D(),e),$i=()=>Fo(D());function _m(e){let{open:t,answer:n,is_old:o}=B();return r`${io(t,()=>{_i(e)})} ${so(t)}
    ${t.shipped?u:Is(l.files?.moulds.find(i=>i.file===t.file))}
    ${bt("shape")&&bt("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${bt("shape")?re("Shape",$i(),Object.entries(Zu),fb):u}
    <div class="beside ${Wt($i())?"rows":""}">
      <div>
        ${il()} ${bt("shape")?gb():u} ${bt("mesh")?_b():u}
        ${sl()} ${bt("water")?wb():u} ${yb()}
      </div>
      <div class="stays">${fo(n,o,wm())} ${vb(e)}</div>
    </div>`}function fb(e){let t={...B().shapes,[$i()]:D().shape};v(B(),{shapes:t,answer:void 0}),ce("/shape",t[e]??Js(e))}function hb(){let{shipped:e,file:t}=B().open;return e?l.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function il(){let e=hb();return Ne({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function gb(){let e=$i(),t=Wt(e);return r`${Cn(e).length?r`<div class="row">
          ${Cn(e).map(n=>Ne({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${t?fm(t):u}`}function sl(e=Dr(D())){return r`<div class="row">
      ${e?u:Ne({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${Ne({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${Ne({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${Ne({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var rl=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],al=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function _b(){let e=o=>String($(D(),`/mesh/${o}`)??""),t=(o,i,s)=>{let a=Qt(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${re(o,e(i),s,c=>ce(`/mesh/${i}`,c||void 0))}
      ${a?r`<p class="complaint">${a}</p>`:u}`},n=Qt("/mesh/file");return r`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${ol.test(e("file"))&&!e("unit")?u:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",rl)} ${t("Which way is up","up",al)}
    ${e("role")==="body"?$b():u}
    <div class="row">
      ${Ne({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${Ne({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function $b(){let e=$(D(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${re("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>ce("/mesh/on_board",t==="yes"?!0:void 0))}`}function wb(){let e=$(D(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":$(e,"/depth")!==void 0?"depth":"below_brim",n=s=>ce("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=$(D(),"/water/weighed_in"),i=t===void 0||t==="brim"?Qt("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${Ne({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${re("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${t==="depth"?Ne({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${t==="below_brim"?Ne({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${re("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>ce("/water/weighed_in",s))}
    <div class="row">
      ${Ie(D(),"/water/weighings").map((s,a)=>Ne({label:`Water, round ${a+1}`,pointer:`/water/weighings/${a}`,unit:"g"},bb(a)))}
    </div>
    ${B().complaint?.field==="/water/weighings"?r`<p class="complaint">${B().complaint.line}</p>`:u}
    <button type="button" @click=${$m}>One more round</button>`}function $m(){let e=Ie(D(),"/water/weighings").length;ce(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var bb=e=>t=>{t.key==="Enter"&&(e+1===Ie(D(),"/water/weighings").length?$m():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function yb(){let e=(t,n)=>r`<button type="button" @click=${n}>${t}</button>`;return r`<div class="choice">
    ${bt("shape")?u:e("Add measures, as a check",()=>ce("/shape",Js("block")))}
    ${bt("shape")&&bt("mesh")?e("Leave the measures out",()=>ce("/shape",void 0)):u}
    ${bt("water")?e("Leave the water out",()=>ce("/water",void 0)):e("Add weighed water",mb)}
  </div>`}function wm(){let e=Ui(D()).length;return e?[...Lo(D()),e===1?"the other number of a point":`the other numbers of ${e} points`]:Lo(D())}function vb(e){let t=String(D().name??"").trim(),n=Ns(t),{open:o,answer:i,is_old:s,complaint:a}=B(),c=i&&!s&&!a&&!wm().length&&t&&!n,d=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!c} @click=${()=>{_i(e)}}>
      ${d?"Save the change":"Use this mould"}
    </button>
    ${d?r`<p class="aside">It stays in ${d}.</p>`:u}
    ${t?u:r`<p class="hint">Give it a name first.</p>`} ${ll(t,n)}
    ${a?r`<p class="alarm" role="status">${kb(a.field)}${a.line}</p>
            ${Cs(D(),a.keep,ce)}`:u}`}var ll=(e,t)=>t?r`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:u;function kb(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=Cn($i()).find(({name:s})=>e===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var xb=200*2**20;async function bm(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(h({mesh:t}),ce("/name",e.name.replace(/\.\w+$/,"")),e.size>xb){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return v(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await Ku(e,o=>v(t,{share:o}));v(t,{share:1,upload:n.file}),await vm(t)}catch(n){v(t,{complaint:n instanceof y?n.message:String(n)})}}async function vm(e){let t=e.questions+1;v(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=e;try{let a=await Un({file:n,unit:o,role:i,up:s});t===e.questions&&v(e,{answer:a,is_measuring:!1})}catch(a){if(!(a instanceof y))throw a;if(t!==e.questions)return;let c=o?e.sizes:Pb(a.complaint),d=c.length&&!o?void 0:Z(a.complaint);v(e,{sizes:c,complaint:d,is_measuring:!1})}}async function Tb(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let s=await Uu({file:n,unit:o,up:i});t===e.questions&&v(e,{inspection:s})}catch(s){if(!(s instanceof y))throw s;t===e.questions&&v(e,{complaint:Z(s.complaint)})}}function Rb(e){return e.inspection?r`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?r`<ul>
            ${e.inspection.defects.map(Sb)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{Tb(e)}}>List every defect of the mesh</button>`}var Sb=({text:e})=>r`<li>${e}</li>`;function Pb({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>x(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function ul(e,t){v(e,t),vm(e)}function km(e,t){let n=a=>{let c=a.target;bm(c.files?.[0]),c.value=""},o=a=>{a.preventDefault(),bm(a.dataTransfer?.files[0])},[i,s]=l.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${a=>a.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${l.mesh?Ab(l.mesh,e,t):u}`}function Ab(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,a])=>[s,a?`${s}: ${a} ${s}`:s]);return r` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?r`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:u}
    ${e.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${e.upload&&!ol.test(e.name)?r`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${re("Unit of the file's numbers",e.unit,i,s=>ul(e,{unit:s}))}`:u}
    ${e.complaint?r`<p class="alarm" role="alert">${e.complaint}</p>`:u}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?Rb(e):u}
    ${e.upload&&(e.unit||e.answer)?r`<h4>What it shows</h4>
            ${re("Role",e.role??e.answer?.gauge.role,rl,s=>ul(e,{role:s}))}
            <h4>Which way is up</h4>
            ${re("Up",e.up??"",al,s=>ul(e,{up:s||void 0}))}`:u}
    ${e.answer?r`${fo(e.answer)} ${Db(e,t,n)}`:u}`}var xm=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function Db(e,t,n){let o=String(D().name??"").trim(),i=Ns(o),s=o&&!i&&!e.is_keeping;return r`${il()} ${sl(xm(e))} ${ll(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>ym(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>ym(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function ym(e,t,n){v(e,{is_keeping:!0});try{let o=Mb(e,await Gu(e.upload,Fb(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await Ob(o))return t(o);Zn(o,"mesh",B().title),await _i(n),v(e,{complaint:l.mould?.complaint?.line})}catch(o){v(e,{complaint:o instanceof y?o.message:String(o)})}v(e,{is_keeping:!1})}function Mb(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=D();return{...i,...xm(e)||o===void 0?{}:{cavities:o},mesh:n}}async function Ob(e){try{return await Lt({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof y&&t.status===422)return!1;throw t}}var Fb=e=>Fn(e.replaceAll(/[^\w.-]+/g,"_"),l.files?.meshes??[]);var qs={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Tm={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Rm(e){ht();let t={...Tm,shape:Js("block")};e==="mesh"?Zn(Tm,"mesh",qs[e]):Zn(e==="water"?{...t,water:nl}:t,"form",qs[e]),Ks()}async function Sm(e,t){ht(),await Kd(e,t),Ks()}async function Vs(e){ht(),await Gd(e),Ks()}function Cb(e){Zn(e,"form","More about this mould"),Ks()}function Ks(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Pm(e){if(!l.mould)return;let{way:t,title:n}=l.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?km(e,Cb):_m(e)}
  </section>`}var cl=()=>h({chosen_mould:void 0});function wi(e,t){let n=l.files?.moulds.find(s=>s.file===e),o=l.catalogue.find(s=>s.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,sell:"",told:t};h({chosen_mould:i}),Lb(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function Lb(e){try{v(e,{answer:await Un({file:e.file})})}catch(t){v(e,{complaint:t instanceof y?t.message:String(t)})}}var Bb=e=>l.files?.moulds.find(t=>t.file===e);function Am(e,t){let n=()=>t(async()=>{await Sm(e.file,e.shipped),cl()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?r`<p role="status">${e.told}</p>`:u} ${e.note?r`<p>${e.note}</p>`:u}
    ${Es(Bb(e.file))}
    ${e.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${e.answer?fo(e.answer):e.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?u:Eb(e,t)}
    </div>
  </section>`}function Eb(e,t){let n=Ls(e.sell),o=i=>()=>t(()=>cs({mould:e.file,name:e.name,formula:i,sell:n}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    ${Bs("mould-sell",e.sell,i=>v(e,{sell:i}))}
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(l.files?.formulas??[]).map(i=>r`<li>
            <button type="button" ?disabled=${!e.answer||!n} @click=${o(i.file)}>
              <b>${i.name}</b><span>${i.note||i.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}var Rn={pour:"base",pipe:"topping",apart:"formula"},Ib=[...Zo,...Xo,...Object.values(Rn),"describing","chosen"];function bi(){let{view:e,run:t,formula_of:n,formulas:o,mould:i,chosen_mould:s}=l;if(e!=="reading")return ft(e)?{name:e,file:t.file,of:t}:e==="moulds"&&i?{name:"describing",file:i.open.id,of:i}:e==="moulds"&&s?{name:"chosen",file:s.file,of:s}:e!=="formula"?{name:e}:n==="apart"?{name:"formula",file:o.apart?.file,of:o.apart}:{name:Rn[n],file:t.file,of:t}}var yt=({name:e,file:t})=>`#${e}${t?`/${t.split("/").map(encodeURIComponent).join("/")}`:""}`;function dl(e){let[t,...n]=e.slice(1).split("/");if(Ib.includes(t))try{return{name:t,file:n.map(decodeURIComponent).join("/")||void 0}}catch{return}}function Mm(e){if(!e)return{};let t=e.name;return ft(t)?{run:e.file,view:t}:{run:e.name===Rn.pour||e.name===Rn.pipe?e.file:void 0,view:qe(t)?t:"reading"}}async function Om({name:e,file:t}){if(!(!(e===Rn.apart&&l.formulas.apart?.file===t)&&!await ds()))try{await Wb(e,t)}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o;h({view:"runs",list_complaint:o.message})}}async function Wb(e,t=""){let n=e;if(ft(n))return Dm(t,n);let o=["pour","pipe"].find(i=>Rn[i]===e);if(o)return await Dm(t,"formula"),Ve(o);if(e===Rn.apart)return ei(t);await Hb(e,t)}async function Dm(e,t){e===l.run.file||!e?h({view:l.run.file?t:"runs",typed:void 0}):await Jt(e,t)}async function Hb(e,t){let n=e;cl(),ht(),h({view:qe(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,fault:void 0});let o=Gi(Me).find(i=>i.id===t);e==="describing"&&o&&await Vs(o),e==="chosen"&&wi(t),jb()}async function jb(){try{h({files:await Ct()}),ls()}catch(e){if(!(e instanceof y))throw e;h({list_complaint:e.message})}}var Ue={id:""},ke,pl=!1,fl=new Map,Gs=JSON.parse(sessionStorage.getItem("left")??"{}");function Cm(){let e=bi();pl||!e||ke&&yt(ke)===yt(e)||(Ys(),Lm(e))}function Lm(e){let t=!ke||ke.name===e.name&&ke.of!==void 0&&ke.of===e.of;if(ke=e,t)return go();Ue={id:crypto.randomUUID(),before:location.hash},fl.set(Ue.id,e.of),history.pushState(Ue,"",yt(e)),requestAnimationFrame(Ub)}function go(){ke&&(Ue.id||(Ue={id:crypto.randomUUID()}),fl.set(Ue.id,ke.of),history.replaceState(Ue,"",yt(ke)))}var Nb="button, input, select, summary, a[href], [tabindex]",ml=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),Bm=e=>[...document.querySelectorAll(`#main :is(${Nb})`)].filter(t=>ml(t)===e);function Ys(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?Gs[Ue.id]={scroll:scrollY}:Gs[Ue.id]={scroll:scrollY,words:ml(e),nth:Bm(ml(e)).indexOf(e)}}function Ub(){scrollTo(0,0),document.activeElement?.closest("#main")||Em()}function Em(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function Im(){let{scroll:e,words:t,nth:n=0}=Gs[Ue.id]??{scroll:0},o=t===void 0?void 0:Bm(t)[n];o?o.focus({preventScroll:!0}):Em(),scrollTo(0,e)}var Qs=e=>Wm({name:e,file:ft(e)?l.run.file:void 0});async function Wm(e){Ys(),await hl(e,()=>{let t=bi();t&&!(ke&&yt(ke)===yt(t))&&Lm(t)})}async function hl(e,t){pl=!0;try{await Om(e)}finally{pl=!1,t()}}function Hm(e){Ue.before===yt(e)?history.back():Wm(e)}var Fm=Promise.resolve();function zb(e,t){Ys();let n=()=>history.state?.id!==e?.id;Fm=Fm.then(async()=>{if(!t)return go();if(n())return;let o=e?fl.get(e.id):void 0,i=[l.run,l.formulas.apart].find(s=>s&&s===o);await hl(i?{...t,file:i.file}:t,()=>{ke=bi(),!n()&&(Ue=e??{id:crypto.randomUUID()},go(),requestAnimationFrame(Im))})})}function jm(){history.scrollRestoration="manual",addEventListener("popstate",e=>{Pu()||zb(e.state,dl(location.hash))}),addEventListener("pagehide",()=>{Ys(),sessionStorage.setItem("left",JSON.stringify(Gs))})}async function Nm(){let e=dl(location.hash);e&&(Ue=history.state??{id:""}),await Hd(Mm(e)),e&&Jb(e)&&await hl(e,()=>{ke=bi(),go(),requestAnimationFrame(Im)}),await jd()}var Jb=e=>!ke||yt(ke)===yt(e);function _o(e=l.plan?"The figures below are out of date.":"No figures yet."){let t=Ds()?void 0:l.complaint;return r`<div class="complaints" role="status">
      ${t?r`<p class="alarm">
                <strong>${e}</strong>
                ${gl(t.field)}${Z(t)}
              </p>
              ${t.is_fault?r`<button type="button" @click=${_l}>Ask again</button>`:u}
              ${At("run")?Cs(l.run.now,t.keep,(n,o)=>W("run",n,o)):u}
              ${qb()?r`<button type="button" @click=${Kb}>Go to the field</button>`:u}`:u}
    </div>
    ${ci()}`}function gl(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function _l(){Y(),l.run.failed&&ot()}function qb(){if(Um())return!0;let e=vn();return e?document.activeElement!==e:Vb()}var Vb=()=>l.view!=="set-up"&&At("run")&&l.complaint!==void 0&&l.complaint.field!=="",Um=()=>["pour","pipe"].find(e=>l.complaint?.file&&l.complaint.field&&At(e));function Kb(){let e=vn(),t=Um();if(e)return ks(e);t?Ve(t):Qs("set-up"),Gb(()=>ks(vn()))}function Gb(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var zm=()=>[...ns().map(e=>io(e)),...ts().map(so)];function Jm(){let e=l.formula_of,t=l.formulas[e];if(!t)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${zm()}${_o()}
      <p>Reading the formula ...</p>
      ${wl(e)}`;let n=l.plan&&Xn(l.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return r`${zm()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${Yb(e)}</p>
    <div class="choice">${wl(e)}${e==="apart"?Qb():u}</div>
    ${Is(l.files?.formulas.find(i=>i.file===t.file))} ${Zb(e,o,n)} ${Vm(e)}
    ${Ca(e)} ${La(e,o)} ${Ea(e)} ${Sa(e)}
    <div class="choice">${wl(e)}</div>`}var qm=e=>[Vm(e),Ca(e),La(e,void 0),Ea(e),Sa(e)],$l=()=>String(l.run.now.name??l.run.file);function Yb(e){let t=l.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=l.formulas.pour===t&&l.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${$l()}".${n}`:o?`Base and topping of "${$l()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${$l()}".${n}`}function wl(e){let t=e==="apart";return r`<button type="button" class="strong" @click=${()=>Hm(t?{name:"formulas"}:{name:l.came_from,file:l.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function Qb(){return r`<button type="button" @click=${()=>{ua("pour")}}>Use it as the base</button> ${je()?r`<button type="button" @click=${()=>{ua("pipe")}}>Use it as the topping</button>`:u}`}function Zb(e,t,n){return r`<section class="strip" aria-label="What comes of it">
    ${t&&n?r`<dl>
            ${[...Xb(e,n),...ey(e,t)].map(([o,i,s])=>r`<div class=${l.is_old?"old":""}>
                  <dt>${o} ${s?eo(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${ty(e)}
  </section>`}function Xb(e,t){let n=e==="pipe"?$a(t,t.whippings[0]):"";return n?[["For one whipping",n]]:be(t.whole)?[["For one batch",gt(t.whole,t.batch)]]:[]}function ey(e,t){let n=qt(e).length?" \u26A0":"";return[["Fats",T(O(l.units,t.fats_g))],["Superfat as weighed",`${Ke(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...$s(t).map(({one:o})=>[o.name,T(bn(l.units,o))])]}function ty(e){let t=Ds()?void 0:l.complaint;if(!t)return r`<div role="status"></div>
      ${ci()}`;let n=At(e),o=n&&t.field!==""&&document.activeElement!==vn();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${l.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${gl(t.field)}${Z(t)}
      </p>
      ${t.is_fault?r`<button type="button" @click=${_l}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>vn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${ci()}`}function Vm(e){return r`<section class="card" aria-label="Name">
    ${f({label:"Name",of:e,at:"/name",wide:!0})}
    ${A({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>f({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Km=(e,t,n)=>{let o=new Map;for(let i=t;i<=n;i++)o.set(e[i],i);return o},Zs=ws(class extends ro{constructor(e){if(super(e),e.type!==Pt.CHILD)throw Error("repeat() can only be used in text expressions")}dt(e,t,n){let o;n===void 0?n=t:t!==void 0&&(o=t);let i=[],s=[],a=0;for(let c of e)i[a]=o?o(c,a):a,s[a]=n(c,a),a++;return{values:s,keys:i}}render(e,t,n){return this.dt(e,t,n).values}update(e,[t,n,o]){let i=bp(e),{values:s,keys:a}=this.dt(t,n,o);if(!Array.isArray(i))return this.ut=a,s;let c=this.ut??=[],d=[],p,m,_=0,w=i.length-1,b=0,R=s.length-1;for(;_<=w&&b<=R;)if(i[_]===null)_++;else if(i[w]===null)w--;else if(c[_]===a[b])d[b]=Kt(i[_],s[b]),_++,b++;else if(c[w]===a[R])d[R]=Kt(i[w],s[R]),w--,R--;else if(c[_]===a[R])d[R]=Kt(i[_],s[R]),ao(e,d[R+1],i[_]),_++,R--;else if(c[w]===a[b])d[b]=Kt(i[w],s[b]),ao(e,i[_],i[w]),w--,b++;else if(p===void 0&&(p=Km(a,b,R),m=Km(c,_,w)),p.has(c[_]))if(p.has(c[w])){let J=m.get(a[b]),Be=J!==void 0?i[J]:null;if(Be===null){let rn=ao(e,i[_]);Kt(rn,s[b]),d[b]=rn}else d[b]=Kt(Be,s[b]),ao(e,i[_],Be),i[J]=null;b++}else ys(i[w]),w--;else ys(i[_]),_++;for(;b<=R;){let J=ao(e,d[R+1]);Kt(J,s[b]),d[b++]=J}for(;_<=w;){let J=i[_++];J!==null&&ys(J)}return this.ut=a,bs(e,d),Pe}});async function Ce(e){h({list_complaint:""});try{await e()}catch(t){h({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof y&&await Nt().catch(()=>{})}}var bl=()=>{Ce(Fc)};function $o(e){return r`<h1 tabindex="-1">${e}</h1>
    ${l.list_complaint?r`<p class="alarm" role="alert">${l.list_complaint}</p>`:u}
    ${l.list_told&&Wo()?r`<p class="told" role="status">
            ${l.list_told} <button type="button" @click=${bl}>Undo</button>
          </p>`:u}
    ${(l.files?.cut??[]).map(t=>r`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Gm=new Map,Ym=Promise.resolve();function Qm(e,t=""){let n=`${e}
${t}`,o=Gm.get(n);return o||(o=Ym.then(()=>ny(e)),Ym=o,Gm.set(n,o)),o}async function ny(e){try{let t=await Bt({kind:"glb",gauge:{file:e}}),n=Nn(await t.arrayBuffer());return No(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof y)return;throw t}}var yl=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{Qm(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void ut(u,this);let{left:n,right:o,floor:i,brim:s,loops:a}=t,c=.04*Math.max(o-n,s-i),d=[n-c,-s-c,o-n+2*c,s-i+2*c];ut(r`<svg viewBox=${d.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${jo(a)} />
      </svg>`,this)}};customElements.define("mould-picture",yl);var Sn=(e,t)=>r`<ul class="cards">
    ${Zs(e,({file:n})=>n,t)}
  </ul>`;function wo(e){let{one:t,facts:n,picture:o,open:i}=e,s=l.list_open?.file===t.file?l.list_open:void 0,a=t.name||t.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{Ce(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${a}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${t.shipped?"built-in":t.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${a}"
      @click=${()=>oy(e,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?iy(e,s):u}
  </li>`}function oy({one:e},t){let{file:n,name:o,note:i}=e;h({list_open:t?{file:n,name:o,note:i,stem:Ho(n)}:void 0})}function iy(e,t){let{kind:n,one:o}=e,i=r`<button type="button" @click=${()=>{Ce(()=>ry(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(c=>o[c]===t[c])&&Ho(o.file)===t.stem,a=()=>{Ce(()=>ay(e,t))};return r`<div class="acts">
    ${Es(o)} ${vl("Name",t,"name")} ${vl("Note",t,"note")}
    ${vl("Name of the file",t,"stem")}
    <div class="choice">
      <button
        type="button"
        class="strong"
        ?disabled=${s||!t.name.trim()||!t.stem.trim()}
        @click=${a}
      >
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{Ce(()=>Zm(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?sy(o,t):u}
  </div>`}function vl(e,t,n){let o=`list-${n}`,i=s=>v(t,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${H(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function sy(e,t){return r`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{Ce(()=>Zm(e,t,!0))}}>Remove it even so</button>
  </div>`}async function ry(e,t){let n=await Cc(e,t),o=l.files?.[e.list].find(i=>i.file===n);o&&(h({list_open:{file:n,name:o.name,note:o.note,stem:Ho(n)}}),requestAnimationFrame(()=>document.getElementById("list-name")?.select()))}async function ay({kind:e,one:t},{name:n,note:o,stem:i}){await Ec(e,t,{name:n.trim(),note:o.trim(),stem:i.trim()}),h({list_open:void 0})}async function Zm(e,t,n){let o=e.used_by??[];if(o.length&&!n)return v(t,{used_by:o});try{await Ic(e,n),h({list_open:void 0})}catch(i){let s=i instanceof y?i.answer.used_by:void 0;if(!s)throw i;v(t,{used_by:s})}}var kl=e=>v(l.new_formula,e);function Xm(){let{name:e,copied:t}=l.new_formula,n=[...l.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>Ce(async()=>{await i(e.trim()),kl({name:"",copied:""})});return r`${$o("Formulas")}
    <section aria-label="Formulas">
      ${Sn(n,ly)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${H(e)}
            @input=${i=>kl({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(Ud)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>kl({copied:i.target.value})}
          >
            <option value="" .selected=${H(t==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${H(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>zd(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>`}function ly(e){let t=e.changed?[`changed ${oo(e.changed)}`]:[];return wo({kind:Ln,one:e,facts:t,open:()=>ei(e.file)})}function uy(e){ht(),wi(e,`Saved in ${e}.`)}function ef(){let{chosen_mould:e}=l;return r`${$o("Moulds")}
  ${e?Am(e,Ce):Pm(uy)??r`${my()} ${cy()}`}`}function cy(){let e=(l.files?.moulds??[]).filter(n=>!n.shipped),t=l.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Sn([...e,...t],dy)}
  </section>`}function dy(e){let t=e.shipped?py(e.file):gy(e.file),n=()=>Promise.resolve(wi(e.file));return wo({kind:Me,one:e,facts:t,picture:e.file,open:n})}var py=e=>l.catalogue.filter(t=>t.path===e).map(t=>`${T($e(l.units,t.brimful_ml))}, ${ie(t.cavities,"cavity","cavities")}; ${t.description}`);function my(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${fy()}
    <div class="choice">
      ${Object.entries(qs).map(([e,t])=>r`<button type="button" @click=${()=>Rm(e)}>${t}</button>`)}
    </div>
  </section>`}function fy(){return Gi(Me).map(e=>{let t=String(oe(e.text)?.name??"").trim()||hy(e)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>Ce(()=>Vs(e))}>Continue</button>
        <button type="button" @click=${()=>{Ht(Me,e.id),z()}}>Discard it</button>
      </div>
    </div>`})}var hy=({file:e})=>l.files?.moulds.find(t=>t.file===e)?.name;function gy(e){let t=kd(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[T($e(l.units,t.brimful_ml)),ie(t.cavities,"cavity","cavities")]:["measuring ..."]}function tf(){let e=_y();if(e)return e;let{run:t}=l,n=l.formula_of==="apart"||!(j(t)||t.theirs||t.failed);return l.view==="formula"&&n?$y():t.theirs?sf(t):t.failed?Tl(`Not saved: ${t.failed}`):j(t)?of:xl(t.shipped?nf:`Saved in ${t.file}`)}var nf="Built-in example: your first change is saved as a copy.",of={words:"Saving ...",is_kept:!1},xl=e=>({words:e,is_kept:!0}),Tl=e=>({words:e,is_kept:!1,is_failed:!0}),sf=e=>Tl(hn(e)?`Not saved: ${e.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${e.file} was changed outside this page. Choose which version to keep.`);function _y(){let e=l.formulas.apart?"apart":"run",t=Rt(e);if(t)return sf(t);if((e==="apart"?[l.formulas.apart]:[l.formulas.pour,l.formulas.pipe]).some(o=>o&&j(o)))return l.complaint?.file===""?Tl(`Not saved: ${l.complaint.problem}`):of}function $y(){let e=l.formulas[l.formula_of];return xl(e?e.shipped?nf:`Saved in ${e.file}`:"")}function Xs(){let{view:e,mould:t,past:n,future:o}=l;return e==="moulds"&&t?rf(t,Yd,Qd):qe(e)?{undo:Wo()&&bl}:rf({past:n,future:o},Zi,vc)}var rf=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var af={runs:"Runs",formulas:"Formulas",moulds:"Moulds"},wy={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},by="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",yy="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Rl=e=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${M`<path d=${e} />`}</svg>`;function lf(){let e=l.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?u:r`<nav class="rail-lists" aria-label="Lists">
                ${Zo.map(t=>uf(t,af[t],r`${af[t]}`))}
              </nav>
              ${ky()}`}
    </div>
    ${e?u:xy()}
  </header>`}var vy={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`};function ky(){let e=t=>()=>{h({units:t}),localStorage.setItem("units",t)};return r`<div class="tools units" role="group" aria-label="Units">
    ${["metric","both","us"].map(t=>r`<button type="button" aria-pressed=${l.units===t?"true":"false"} @click=${e(t)}>
          ${vy[t]}
        </button>`)}
  </div>`}function xy(){let{undo:e,redo:t}=Xs();return r`<div class="bar">
    ${l.run.file?Ty():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${Rl(by)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${Rl(yy)}<span>Redo</span></button>
    </div>
    ${l.run.file?Ay():u}
  </div>`}function Ty(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(l.run.now.name??l.run.file)}</p>
    <div class="rail-views">${Xo.map(Ry)}</div>
  </nav>`}function Ry(e){let[t,n]=wy[e],o=Sy(e);return uf(e,o?`${t}, ${o.words}`:t,r`${Rl(n)}<span>${t}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function Sy(e){if(e==="watch"&&np())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="set-up"&&Py())return{sign:"\u25CB",words:"missing"}}var Py=()=>l.complaint!==void 0&&!l.complaint.is_fault;function uf(e,t,n){let o=l.view===e;return r`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":u}
    @click=${()=>{Qs(e)}}
  >
    ${n}
  </button>`}function Ay(){let{words:e,is_kept:t,is_failed:n}=tf();return r`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}function df(e){if(!sp(e))return u;let{whole:t}=e,{batches:n}=t.pieces,o=be(t)?`${ie(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${cf(e,"pour","The base, whole run")}
      ${t.pipe?cf(e,"pipe","The topping, whole run"):u} ${Dy(e)}
    </div>
  </section>`}function cf(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,s=[...gp(i),...$s(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:a,i:c})=>er(`${t}.ingredients.${c}.g`,a.name,bn(l.units,a)))}
    ${er(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",O(l.units,i.make_g))}
  </div>`}var er=(e,t,n)=>P({key:`needs.${e}`,label:t,shown:n,of:e});function Dy(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((s,a)=>s.colours.map((c,d)=>({layer:s,one:c,i:a,j:d}))),o=t.dust??[];if(!n.length&&!o.length)return u;let i=s=>te(l.units,ye(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:a,i:c,j:d})=>er(`pour.layers.${c}.colours.${d}.g`,`${a.name}, for ${s.name}`,bn(l.units,a)))}
    ${o.map((s,a)=>er(`dust.${a}.g`,s.name,i(s)))}
  </div>`}function pf(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:a}=e.piece,c=s?"A bar on average, ":"",d=p=>c?c+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${P({key:"piece.fresh",label:d("Fresh"),shown:O(l.units,n),of:"piece.fresh_g"})}
      ${o===null?u:P({key:"piece.cured",label:d("Cured"),shown:O(l.units,o),of:"piece.cured_g"})}
      ${s?P({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:O(l.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:P({key:"piece.label",label:"Net weight for the label",shown:O(l.units,i,0),of:"piece.label_g"})}
      ${a?P({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[a.width_mm,a.depth_mm,a.height_mm].map(p=>x(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${t&&t.amount!==null?r`${P({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
            ${t.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${Sl(e)}
    </section>
    ${df(Xn(e))}`}function Sl(e){let t=e.label;if(!t)return u;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[ff,Al]=[440,270],[yi,Pl,tr,bo]=[64,ff-10,10,Al-52],My=6,Oy=8;function mf(e){let t=e/My,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,s)=>s*o)}var yo=e=>x(e,1);function hf(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=c=>yo(yi+(Pl-yi)*c/n),s=c=>yo(bo-(bo-tr)*c/o),a=e.map(({depth_mm:c,volume_ml:d})=>`L${i(c)} ${s(d)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${ff} ${Al}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${mf(n).map(c=>M`<path class="grid" d="M${i(c)} ${tr}V${bo}" />
            <text x=${i(c)} y=${bo+20} text-anchor="middle">${yo(c)}</text>`)}
      ${mf(o).map(c=>M`<path class="grid" d="M${yi} ${s(c)}H${Pl}" />
            <text x=${yi-8} y=${s(c)} text-anchor="end" dominant-baseline="middle">${yo(c)}</text>`)}
      ${M`<text x=${(yi+Pl)/2} y=${Al-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(tr+bo)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${a}" />
        <path class="pour-line" d="M${i(t)} ${tr}V${bo}" />`}
    </svg>
    ${Fy(e)}`}function Fy(e){let t=Math.max(1,Math.round(e.length/Oy)),n=e.filter((o,i)=>(i+1)%t===0);return r`<details>
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
              <th scope="row">${yo(o)}</th>
              <td>${yo(i)}</td>
              <td>${x(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var nr=Math.PI/8,Cy=500,Dl=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#s="";#r=!1;#a="";#l="Drawing ...";#c=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#c),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#a="",URL.revokeObjectURL(this.#s)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#w()},{timeout:1500})}async#w(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#d()===this.#a||(window.clearTimeout(this.#c),this.#c=window.setTimeout(()=>{this.#p()},Cy))}#d(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let t=this.#d();if(t!==this.#a){try{let n=await Bt(JSON.parse(t));if(t!==this.#d()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#t?.show(Nn(await n.arrayBuffer())),this.#a=t,this.#l=""}catch(n){if(!(n instanceof y))throw n;this.#l=n.message}this.#u()}}#_(t){t(),this.#l="Drawing ...",this.#u(),this.#p()}#u(){let t=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#l}</p>`;ut(r`${t} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#e]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-nr)}>Turn left</button>
        <button type="button" @click=${t(nr)}>Turn right</button>
        <button type="button" @click=${n(nr)}>From above</button>
        <button type="button" @click=${n(-nr)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#e].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",Dl);function gf(e){let{measured:t}=l;if(!t)return r`<p role="status">${l.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${P({key:"mould.brimful",label:"To the brim",note:`${T(pe(l.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:$e(l.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${hf(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${Ly(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function Ly(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:l.run.file,run:l.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var vo=e=>v(l.printing,e);function _f(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function $f(e){if(!l.printing.is_working){vo({is_working:!0,told:"Making it ..."});try{await By(),vo({told:await e()})}catch(t){vo({told:t instanceof Error?t.message:String(t)})}vo({is_working:!1})}}async function By(){await zn();let e=Rt("run");if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var Xt=(e,t)=>()=>$f(async()=>{let n=URL.createObjectURL(await Bt(t));return _f(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),Ey=e=>()=>$f(async()=>(_f(await Vu(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),Iy=e=>{vo({paper:e}),localStorage.setItem("paper",e)},Wy=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function wf(e){let{batch:t}=l.printing;return be(e)&&t<=e.pieces.batches?t:0}function Hy(e){if(!be(e))return u;let t=wf(e),n=i=>vo({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${H(i===t)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${Wy(e).map(({number:i,one:s})=>o(i,`batch ${i} of ${e.pieces.batches}: ${gt(e,s)}`))}
      </select>
    </div>
  </div>`}function bf(e){let{paper:t,is_working:n,told:o}=l.printing,i=l.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),s={file:l.run.file,run:l.run.now},a=l.measured?.mould,c={file:a,"below-brim":`${e.pour.below_brim_mm} mm`},d=wf(e),p={plan:s,paper:t,...d?{batch:String(d)}:{}},m=(_,w,b="")=>r`<button type="button" class=${b} ?disabled=${n} @click=${()=>{w()}}>${_}</button>`;return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${re("Paper",t,[["A4","A4"],["Letter","Letter"]],Iy)}
    ${Hy(e)}
    <div class="choice">
      ${m("Bench sheet, to print",Ey({kind:"sheet",...p}),"strong")}
      ${l.files?.makes_pdf?m("Bench sheet, PDF",Xt(`${i}${d?` batch ${d}`:""}.pdf`,{kind:"sheet-pdf",...p})):""}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?m("Label draft",Xt(`${i} label.txt`,{kind:"label",plan:s})):""}
      ${m("Drawing of the pour, true size",Xt(`${i} pour.svg`,{kind:"picture",plan:s}))}
      ${m("Drawing of the piece",Xt(`${i}.svg`,{kind:"piece",plan:s}))}
      ${m("Whole piece, GLB (3D viewer)",Xt(`${i}.glb`,{kind:"glb",plan:s}))}
      ${m("Whole piece, STL (3D printing)",Xt(`${i}.stl`,{kind:"stl",plan:s}))}
      ${a?r`${m("Filled cavity, GLB (3D viewer)",Xt(`${i} cavity.glb`,{kind:"glb",gauge:c}))}
            ${m("Cavity, STL (3D printing)",Xt(`${i} cavity.stl`,{kind:"stl",gauge:{file:a}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${T(pe(l.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var yf=e=>bf(e);var fe={at:"/decorations"},ko=e=>`${fe.at}/${e}`,en=e=>F("run",`${ko(e)}/name`).trim()||`Decoration ${e+1}`,Qe=()=>$(l.run.now,"/cut")!==void 0,or=e=>["mould","rod","drizzle"].find(t=>g("run",`${e}/${t}`)!==void 0),vi=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var ze="/batch",vf=e=>`${e}/moulds_owned`;function Ml(){return A({name:"batches",pointers:[ze],summary:`Batches${jy()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${I("run",ze)}
        <div class="row">${Ny()} ${zy()}</div>
        ${k({question:"Cavities at each filling",at:ze,asked_at:`${ze}/fill`,chosen:g("run",`${ze}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:e=>kf("fill",e==="full"?e:void 0)})}`})}function jy(){let[e,t]=[`${ze}/pieces`,`${ze}/casts`].map(o=>F("run",o)),n=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function kf(e,t){let n=X("run",ze,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function Ny(){let e=g("run",`${ze}/casts`)!==void 0,t=(n,o)=>f({label:o,at:`${ze}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return Qe()?g("run",`${ze}/pieces`)!==void 0?r`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${Uy}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function Uy(){L("run","Counted in loaves",ze,kf("pieces",void 0))}function zy(){let e=`${ze}/whippings`;return!je()&&g("run",e)===void 0?u:f({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var Jy=500,qy=()=>$(l.run.now,"/cut")===void 0&&Vy()>=Jy,Vy=()=>l.plan?.pour.brimful_ml??l.measured?.gauge.pockets[0]?.brimful_ml??0;function xf(e){ue("set-up cut"),L("run","Cut","/cut",{bar:Ol[e],kerf:""},me("run",`/cut/bar/${Object.keys(Ol[e])[0]}`))}function Ky(){L("run","Left whole","/cut",void 0,N("cut-into-bars"))}function Tf(){return qy()?r`<button type="button" id="cut-into-bars" @click=${()=>xf("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>xf("slab")}>Cut it into bars</button>`:u}var Ol={loaf:{thickness:""},slab:{length:"",width:""}};function Gy(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var Yy={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function Rf(){let e=Gy(),t=(o,i)=>f({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=F("run","/cut/along");return r` ${k({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Ol[o]})}
    <div class="row">
      ${e==="loaf"?f({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${e==="slab"?["length","width"].map(o=>f({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${f({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0,term:"kerf"})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm.</p>
    ${e?k({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:Yy[e],puts:o=>o||void 0}):u}
    <button type="button" @click=${Ky}>Leave it whole</button>`}var Qy={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Ze={at:"/dust"},ir=e=>F("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function Sf(){ue("set-up dust"),V(Ze,{name:""},"Dust")}function Zy(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function Pf(e){let t=`/dust/${e}`,n=Zy(t),o=ir(e),i=s=>({...X("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...Qy[s]});return r` ${f({label:"Which powder",at:`${t}/name`})}
  ${k({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?f({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${f({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${f({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${f({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${Yt("run",t,o)}`}var Xy={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function ev(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function Af(e,t){let n=ev(e),o=i=>({...X("run",e,["on_top","buried"]),...Xy[i]});return or(e)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:A({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>r` ${k({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?tv(`${e}/on_top`):n==="buried"?ov(e,t):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function tv(e){return r`<div class="row">
      ${f({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${f({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${Df(e,"It is turned")}`}function Df(e,t){let n=o=>f({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return A({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var nv=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function ov(e,t){let n=`${e}/buried`,o=t===S(fe).findIndex(a=>a.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),s=g("run",`${n}/placed`);return r`${I("run",n)}
  ${f({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${k({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:a=>a,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${k({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:i,answers:nv,puts:a=>sv(e,a)})}
  ${i==="said"?av(e,t):u}`}var iv=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${M`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,Mf={x:"",y:"",height:""};function sv(e,t){let n=X("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${vi(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>Mf);return{...X("run",e,["per_piece","per_cast"]),[Of(e)]:i.length,buried:{...n,places:i}}}var Of=e=>Qe()?"per_cast":vi(e)??"per_piece";function rv(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,a)=>C(s,`${e}/${a}`,void 0),n);return C(i,`${e}/${Of(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function av(e,t){let n=rv(e),o=S(n);return r`${iv()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let a=`${n.at}/${s}`,c=d=>f({label:`Place ${s+1}: ${d}`,at:`${a}/${d}`,unit:"mm",short:!0});return r`<div class="part" id=${U(n,s)} role="group" aria-label="Place ${s+1} of ${en(t)}">
        ${I("run",a)}
        <div class="row">
          ${c("x")} ${c("y")} ${c("height")} ${Q(n,s,`place ${s+1} of ${en(t)}`)}
        </div>
        ${Df(a,`Place ${s+1} is turned`)}
      </div>`})}
    ${K(n,"Add a place",()=>V(n,Mf,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Ff=e=>`${e} made`;function lv(){let e=ko(S(fe).length),t=Qe()?{}:{per_piece:""};ue("set-up decorate");for(let n of[Ff(e),`${e} where`])po("run",n);V(fe,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Cf(){let[e,t]=[S(fe).length>0,S(Ze).length>0];return r`${K(fe,e?"Add another decoration":"Add a decoration",lv)}
  ${K(Ze,t?"Add another dust":"Add a dust",Sf)}`}function Lf(e){let t=ko(e);return r` ${I("run",t)} ${pv(t)}
    <div class="row">
      ${uv(t)} ${f({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${f({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
      ${f({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
      ${f({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}
    </div>
    ${Af(t,e)} ${Yt("run",t,en(e))}`}function uv(e){let t=vi(e),n=_e("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(Qe()&&t==="per_piece"))return r``;let o=t==="per_cast"?Qe()?"In each loaf":"In each cast":Qe()?"On each bar":"On each piece",i=s=>({...X("run",e,["per_piece","per_cast"]),[s]:t?g("run",`${e}/${t}`):""});return r`${Qe()?k({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${t?f({label:o,at:`${e}/${t}`,count:!0,short:!0}):u}`}var cv={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function dv(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle",...t==="drizzle"?["on_top","buried"]:[]];return{...X("run",e,n),...cv[t]}}function pv(e){let t=or(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","time_per_tray_fill"].map(o=>`${e}/${o}`);return A({name:Ff(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>r` <div class="row">
          ${f({label:"What it is called",at:`${e}/name`})}
          ${f({label:"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${k({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>dv(e,o)})}
        ${t?mv[t](e):u}
        ${f({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var mv={mould:fv,rod:e=>r`<div class="row">
      ${f({label:"Rod, diameter",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${f({label:"Rod, length",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>r`<div class="row">
      ${f({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${f({label:"Thickness",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function fv(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return r`${co("Cast in",`${e}/mould`,l.files?.moulds)}
  ${k({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?f({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):f({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${k({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function Bf(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!je()?u:r`<div class="labelled">
      ${Ra(e,"Make one pot of lye solution for both",t,{})}${St("lye_solution")}
    </div>
    ${rt("lye_solution")}
    ${t?f({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Ef(e){let t={at:"/bottles"},n=S(t);return A({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${e&&ee(e)?` Weights are of ${ee(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${t.at}/${i}`,a=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${U(t,i)} role="group" aria-label=${a}>
            <div class="part-head">
              <p class="part-title">${a}</p>
              ${Q(t,i,a)}
            </div>
            ${I("run",s)}
            <div class="row">
              ${f({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${f({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${e?hv(e,i,a):u}
          </div>`})}
        ${K(t,"Use up a bottle",()=>V(t,{name:"",holds:""},"bottle"))}`})}function hv(e,t,n){let o=e.bottles?.[t];return o?.name!==n?u:o.parts.map((i,s)=>P({key:`bottle.${t}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${x(i.percent_of_batter,2)} % of the batter`,shown:te(l.units,ye(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${s}.g`}))}var ki="/label",Cl=()=>g("run",ki)!==void 0;function If(){let t=g("studio",xo.studio)!==void 0?{weight_spread:""}:{market:""};ue("set-up label"),L("run","Label added",ki,t,N("lane-label"))}function Wf(){return r`${I("run",ki)} ${gv()}
    <button type="button" @click=${()=>L("run","Label removed",ki,void 0)}>Remove the label</button>`}var xo={run:"/label/market",studio:"/label/market"};function Ll(){let{of:e,at:t}=pi(xo);return r`${k({of:e,question:"Where it is sold",at:e==="run"?ki:t,asked_at:t,chosen:g(e,t)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>e==="run"?_v(n):n})}
  ${mo("Where it is sold",[xo])}`}function gv(){let e=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${Ll()}
  ${k({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:e,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:$v})}
  ${e==="weighed"?wv():r`<div class="row">
          ${f({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${f({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${f({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${Tn(xo)==="EU"||g("run",Fl)!==void 0?Ra(Fl,"With the e mark",g("run",Fl)===!0,!0):u}`}var Fl="/label/e_mark";function _v(e){return{...X("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function $v(e){let t=X("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function wv(){let e={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${S(e).map((t,n)=>r`<div class="row" id=${U(e,n)}>
            ${f({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${Q(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${K(e,"One more piece",()=>V(e,"","piece"))}`}function Hf(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,s=e.batches.map(d=>`${_a(e)?`${d.count} of `:""}${gt(e,d)}`),a=`Made in ${t} batches${_a(e)?": ":" of "}${oi(s)}; ${fs(n,o)}.`,c=e.batch_limits.filter(d=>d.sets);return r`<div class="batches-told of-plan">
    ${be(e)?r`<p><b>${a}</b></p>`:u}
    ${i>0?r`<p>
            ${ie(i,e.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${c.length?r`<p><span class="called">What sets a batch:</span> ${c.map(d=>d.text).join(" ")}</p>`:u}
    ${e.around.length?r`<p><span class="called">One fewer, one more:</span> ${e.around.map(d=>d.text).join(" ")}</p>`:u}
  </div>`}var jf=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function Nf(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(d=>!d.buried&&d.cavity_fills>0),s=i?qf(i):0,a=i?i.on_top?.stands_proud_mm??1.9*s:0,c=e.pipe?bv(e,t,n,a):0;return{brim:n,line:o,topping:c,ball:s,proud:a,top:Math.max(n,(e.pipe?n:o)+c+a)}}function bv(e,t,n,o){let i=to($(l.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(e.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[a,c]=Ur(t,t.brim-.01),d=Math.PI/4*(c-a)**2;return 1500*e.pipe.visible_each_ml/d}function Bl(e,t){let[n,o]=Ur(e,e.brim-.01),i=(n+o)/2,s=3,a=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),c=m=>-(t.brim+t.topping*m/s),d=(m,_,w)=>{let b=i+w*(Math.max(a(m),a(_))+(o-n)*.035);return`C${b} ${c(m)} ${b} ${c(_)} ${i+w*a(_)*(_?.94:1)} ${c(_)}`},p=`M${n} ${c(0)}`;for(let m=0;m<s;++m)p+=d(m,m+1,-1);p+=`L${i+a(s)*.94} ${c(s)}`;for(let m=s;m>0;--m)p+=d(m,m-1,1);return`${p}Z`}var xi=(e,t)=>e===t?`shaded ${t}`:"plain";function tn(e,t,n=u){return r`${Uf(e,t,n)}
  ${e==="decorate"&&El(t)?r`<p class="hint">${El(t)}</p>`:u}`}var nn=(e,t)=>r`<div class="small-view">${Uf(e,t,u)}</div>`;function Uf(e,t,n){let o=l.measured?.outline;if(!o)return r`<p class="drawing hint">${l.measuring_failed??"Reading the mould ..."}</p>`;let i=Nf(t,o),s=o.right-o.left,a=Math.max(6,s*.1),c={x:o.left-a,y:-i.top-a,w:s+2*a,h:i.top+2*a};return r`<div class="drawing">
    <svg viewBox="${c.x} ${c.y} ${c.w} ${c.h}" role="img" aria-label=${Dv(e,t)}>
      ${yv(e)} ${vv(e,t,o,i)} ${xv(e,t,o,i)} ${Tv()}
      ${Rv(e,t,o,i)} ${Av(e,t,o,i)}
      ${M`<line class="pour-line" x1=${c.x+1} x2=${c.x+c.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${c.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${c.x+c.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function zf(e,t){let n=l.measured.outline,o=Nf(e,n),i=n.right-n.left,s=Math.max(6,i*.1),a=o.top+2*s;return{share:(o.top+s-t)/a,per_mm:1/a,w:i+2*s,h:a}}function yv(e){return M`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${jf(Jf())} /></clipPath>
  </defs>`}function Jf(){let e=l.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function vv(e,t,n,o){let i=e==="cut"?"pour":e,s=t.pour.layers??[],a=(s.length?s.map(c=>kv(c,n)):[[o.line,o.line]]).map(([c,d])=>`M${n.left} 0V${-c}L${n.right} ${-d}V0Z`);return M`<g clip-path="url(#cavity-${e})">${a.map((c,d)=>M`<path class="whole" d=${c} /><path class="${xi(i,"pour")} band${d%3}" d=${c} />${i==="pour"&&d%2===0?M`<path fill="url(#hatch-${e})" d=${c} />`:u}`).reverse()}</g>`}function kv(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function xv(e,t,n,o){if(!t.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(l.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,a=(n.left+n.right)/2;return M`<g clip-path="url(#cavity-${e})"><rect class=${xi(e,"pipe")} x=${a-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function Tv(){return M`<path class="wall" fill-rule="evenodd" d=${jf(Jf())} />`}function Rv(e,t,n,o){let i=(n.left+n.right)/2,s=t.pipe?o.brim:o.line,a=t.decorations?.flatMap((c,d)=>(c.buried?.embeds??[]).map(p=>({embed:p,one:c,i:d})))??[];return M`
    ${t.pipe?M`<path class=${xi(e,"pipe")} d=${Bl(n,o)} />${e==="pipe"?M`<path fill="url(#dots-pipe)" d=${Bl(n,o)} />`:u}`:u}
    ${e==="dust"?Sv(t,n,o):u}
    ${o.ball?M`<circle class=${xi(e,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${a.map(({embed:c,one:d,i:p})=>Pv(xi(e,"decorate"),i,c,d,p))}`}function Sv(e,t,n){let o=`M${t.left} ${-n.line}H${t.right}`;return M`<path class="powder" d=${e.pipe?Bl(t,n):o} />`}function Pv(e,t,n,o,i){let[s,a]=[t+n.middle_mm[0],n.middle_mm[2]],c=to($(l.run.now,`/decorations/${i}/rod/diameter`)),d=to($(l.run.now,`/decorations/${i}/rod/length`));if(!c||!d)return M`<circle class=${e} cx=${s} cy=${-a} r=${qf(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),w=c/2*Math.sqrt(1-_*_),b=d*_+2*w,R=-180/Math.PI*Math.atan2(m,p);return M`<rect class=${e} x=${-b/2} y=${-c/2} width=${b} height=${c} rx=${w} ry=${w?c/2:0}
    transform="translate(${s} ${-a}) rotate(${R})" />`}var qf=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function El(e){let t=(e.decorations??[]).filter((n,o)=>$(l.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function Av(e,t,n,o){if(e!=="cut"||!t.cut)return u;let i=Math.max(t.cut.rows,t.cut.columns);return M`${Array.from({length:i-1},(s,a)=>{let c=n.left+(n.right-n.left)*(a+1)/i;return M`<line class="knife" x1=${c} x2=${c} y1=${-o.line} y2="0" />`})}`}function Dv(e,t){let n=T(pe(l.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${El(t)}`.trim()}var Mv=e=>`set-up ${e}`;function Le({name:e,title:t,drawing:n,result:o,about:i,form:s}){let a=Mv(e),c=()=>Ge({part:t,fold:a},s);if(si())return r`${c()}`;i.some(([m,_])=>Ye(m,_))&&ue(a);let d=l.open.has(a),p=lo().filter(({folds:m})=>m.includes(a)).length;return r`<section class="lane ${e} ${d?"is-open":""}" aria-labelledby="lane-${e}">
    <div class="part-line">
      ${d||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${e}" tabindex="-1">${t}</h2>
        ${o} ${p?r`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${d?"true":"false"}
        aria-label="${d?"Close":"Change"} ${t}"
        @click=${()=>dt("open",a)}
      >
        ${d?"Close":"Change"}
      </button>
    </div>
    ${d?r`<div class="lane-body">${c()}</div>`:u}
  </section>`}var ae=e=>r`<p class="order ${l.is_old&&l.plan?"old":""}">${e}</p>`;var Vf=()=>S(fe).length>0,Kf=()=>S(Ze).length>0;function Gf(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function Yf(e){let t=e?S(fe).flatMap((n,o)=>Xf(e,o)??[]):[];return Le({name:"decorate",title:"Decorate",drawing:e&&(()=>nn("decorate",e)),result:t.length?t.map(n=>Fv(e,n)):ae(Qf(fe,en)),about:[["run",fe.at]],form:()=>r`${e?r`<div class="side">${tn("decorate",e)}</div>`:u}
        <div class="weights">${e?S(fe).map((n,o)=>Ov(e,o)):u}</div>
        ${eh(fe,en,Lf)}`})}var Qf=(e,t)=>`${S(e).map((n,o)=>t(o)).join(", ")}, not yet with figures.`;function Ov(e,t){let n=Xf(e,t);return n?Cv(e,n,t):u}function Zf(e){let t=e?.dust?.length?S(Ze).map((n,o)=>Bv(e,o)):void 0;return Le({name:"dust",title:"Dust",drawing:e&&(()=>nn("dust",e)),result:t??ae(Qf(Ze,ir)),about:[["run",Ze.at]],form:()=>r`<div class="side">${e?tn("dust",e):u}</div>
        <div class="weights">${e?S(Ze).map((n,o)=>Ev(e,o)):u}</div>
        ${eh(Ze,ir,Pf)}`})}var Xf=(e,t)=>Gf(e.decorations,S(fe),F("run",`/decorations/${t}/name`),t);function eh(e,t,n){return r`<div class="all-questions">
    ${S(e).map((o,i)=>r`<section class="questions" id=${U(e,i)} aria-labelledby="${U(e,i)}-title">
          <div class="part-head">
            <h3 id="${U(e,i)}-title">${t(i)}</h3>
            ${Q(e,i,t(i))}
          </div>
          ${Ge({part:t(i)},()=>n(i))}
        </section>`)}
  </div>`}function Fv(e,t){let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"",o=T(te(l.units,ye(t,"make_")));return ae(r`Cast <b>${t.casts}</b> of ${t.name} ahead${n}, from <b>${o}</b> of
      ${t.material}${be(e.whole)?", for the whole run":""}.`)}function Cv(e,t,n){return r`<h3>${t.name} ${be(e.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${P({key:`set-up.decorations.${n}.make`,label:`Melt of ${t.material}`,shown:te(l.units,ye(t,"make_")),of:`decorations.${n}.make_g`})}
    ${P({key:`decorations.${n}.each`,label:"Each weighs",note:`${x(t.volume_each_ml,2)} ml`,shown:O(l.units,t.mass_each_g,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?r`<p>${Vt(t.casting_s)} of casting.</p>`:u} ${Lv(t,n)}`}function Lv(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return u;let i=a=>a===null?"not known":T(pe(l.units,a)),s=a=>{let c=(o?.embeds??[]).map(a).filter(d=>d!==null);return c.length?T(pe(l.units,Math.min(...c))):"nothing near"};return r`<h4>Fit of ${e.name}</h4>
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
                <dd>${x(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${kn(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function Bv(e,t){let n=th(e,t);if(!n)return u;let o=ee(e);return ae(r`<b>${T(te(l.units,ye(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var th=(e,t)=>Gf(e.dust,S(Ze),F("run",`/dust/${t}/name`),t);function Ev(e,t){let n=th(e,t);if(!n)return u;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=P({key:`set-up.dust.${t}`,label:n.name,note:ee(e),shown:te(l.units,ye(n,"")),of:`${e.place}.dust.${t}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function nh(e){let t=e?.cut;return Le({name:"cut",title:"Cut",drawing:e&&(()=>nn("cut",e)),result:t?Iv(e,t):ae("Cut into bars, not yet with figures."),about:[["run","/cut"]],form:()=>r`${t?Wv(e,t):u}
        <div class="all-questions">${Rf()}</div>`})}var Iv=(e,t)=>ae(r`Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}; a bar is
      ${T(O(l.units,e.piece.fresh_g))} on average, fresh.`);function Wv(e,t){return r`<div class="side">${tn("cut",e)}</div>
    <div class="weights">
      ${P({key:"cut.bar",label:"A bar on average, fresh",note:Hv(t),shown:O(l.units,e.piece.fresh_g),of:"cut.bars_each"})}
      ${P({key:"cut.offcuts",label:"Offcuts",shown:O(l.units,t.offcuts_g),of:"cut.offcuts_g"})}
      ${jv(t)}
    </div>`}function Hv(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${x(n,1)} to ${x(o,1)} g`}function jv(e){return e.one_more?.length?r`<ul class="limits">
    ${e.one_more.map(t=>r`<li>Cut to ${t.size_text} along ${t.direction}: ${t.bars} bars from each.</li>`)}
  </ul>`:u}function oh(e){return Le({name:"label",title:"Label",drawing:Uv,result:ae(Nv(e)),about:[["run","/label"]],form:()=>r`<div class="more">${Wf()} ${e?Sl(e):u}</div>`})}function Nv(e){let t=e?.piece.label_g;return!e?.label||t===null||t===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${T(O(l.units,t,0))}</b>, sold in the ${e.label.market}.`}var Uv=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${M`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var sn="/pour/layers",on={at:sn,in_order:!0},Il=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],rr=()=>S(on);function zv(){let e=t=>rr().some(n=>t in n);return Il.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function sh(e){let t=rr(),n=zv();return t.length?r`<h3>
      Layers, lowest first ${e&&ee(e)?r`<small>${ee(e)}</small>`:u}
    </h3>
    ${k({question:"All of them by",at:sn,is_told_elsewhere:!0,chosen:n,answers:Il,puts:o=>qv(o,e)})}
    <div class="items">${t.map((o,i)=>Vv(o,i,n,e))}</div>
    ${K(on,"One more layer on top",()=>V(on,{name:Jv(t),[n]:""},"layer"))}`:r`<p class="choice">
      ${K(on,"Pour it in layers",()=>V(on,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function Jv(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function rh(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function qv(e,t){let n=rr(),o=l.is_old?void 0:t,i=(s,a)=>{let c=rh(o,s,a);return e==="parts"||!c||e==="depth"&&"tilted"in s?"":e==="depth"?`${x(c.to_mm-c.from_mm,3)} mm`:`${x(c.mass_each_g,3)} g`};return n.map((s,a)=>{let c=sr(a),d=e!=="parts"&&n.length>1&&a===n.length-1;return{...c,...d?{rest:!0}:{[e]:i(s,a)}}})}var sr=e=>X("run",`${sn}/${e}`,[...Il.map(([t])=>t),"rest"]);function Vv(e,t,n,o){let i=`${sn}/${t}`,s=String(e.name)||`Layer ${t+1}`,a=rh(o,e,t);return r`<div class="part" id=${U(on,t)} role="group" aria-label="Layer ${s}">
    ${a&&o?Kv(o,a,t):r`<p class="part-title">${s}</p>`} ${I("run",i)}
    ${Yv(e,t,n,s)}
    ${o&&a?a.colours.map((c,d)=>Gv(o,c,t,d)):u}
    ${A({name:i,pointers:["name","colours","tilted"].map(c=>`${i}/${c}`),summary:"Name, colours, tilt",body:()=>r` ${f({label:"Name of the layer",at:`${i}/name`})} ${ek(i,s)} ${tk(i,t)}
        ${Q(on,t,s)}`})}
  </div>`}function Kv(e,t,n){return P({key:`pour.layer.${n}`,label:t.name,note:`${va(pe(l.units,t.to_mm-t.from_mm))} thick, ${va(O(l.units,t.mass_each_g))} each`,shown:t.g_text===void 0?O(l.units,t.g):te(l.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function Gv(e,t,n,o){return P({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${x(t.teaspoons,1)} tsp`:"",shown:bn(l.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function Yv(e,t,n,o){if(n==="parts")return Qv(e,t,o);let i="rest"in e;return r`${i?u:f({label:`${o}, ${n}`,at:`${sn}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?Xv(t,n):Zv(t,n)}
    >
      Takes the rest
    </button>`}function Qv(e,t,n){let o=`${sn}/${t}/parts`,i=s=>()=>{h({typed:void 0}),W("run",o,Math.max(1,(Number(e.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${f({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function Zv(e,t){let n=rr().map((o,i)=>i===e?{...sr(i),rest:!0}:o.rest?{...sr(i),[t]:""}:o);L("run","takes the rest",sn,n)}function Xv(e,t){let n=`${sn}/${e}`;L("run","amount of the layer",n,{...sr(e),[t]:""},me("run",`${n}/${t}`))}function ek(e,t){let n={at:`${e}/colours`,in_order:!0};return r`${S(n).map((o,i)=>{let s=`${n.at}/${i}`,a=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${U(n,i)} role="group" aria-label="${a} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${a}</p>
        ${Q(n,i,a)}
      </div>
      ${I("run",s)}
      <div class="row">
        ${f({label:"Colour",at:`${s}/name`})}
        ${f({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${f({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${Yt("run",s,a)}
    </div>`})}
  ${K(n,"Add a colour",()=>V(n,{name:"",rate:""},"colour"))}`}var ih=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function tk(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===S(on).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:Dt({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${f({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${k({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:ih,puts:s=>s})}
        ${A({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!ih.some(([s])=>s===o),body:()=>f({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var lt=()=>$(l.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Wl(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=lt()==="depth"?n-o:o;h({typed:void 0}),W("run",`/pour/line/${lt()}`,`${x(i,2)} mm`)}function ah(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=to($(l.run.now,`/pour/line/${lt()}`));return n===void 0?e.pour.below_brim_mm:lt()==="depth"?t-n:n}function nk(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=a=>t((a.clientY-e.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.removeEventListener(a,s)};n.addEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.addEventListener(a,s)}function ok(e){if(!l.measured)return u;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=ah(e),{share:o,h:i}=zf(e,t-n),s=d=>nk(d,p=>Wl(e,n+p*i)),a=d=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[d.key];p!==void 0&&(d.preventDefault(),Wl(e,n+p))},c=d=>d&&(d.style.top=`${100*o}%`);return queueMicrotask(()=>c(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${x(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${T(pe(l.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${a}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function ik(e){let{pour:t}=e,n=T(pe(l.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each",s=ee(e);return ae(r`${o}, <b>${T(O(l.units,t.mass_each_g))}</b> ${i}; make
      <b>${T(O(l.units,t.make_g))}</b>${s?` for ${s}`:""}.`)}var lh=()=>lt()==="depth"?"Depth":"Below brim";function uh(e){return Le({name:"pour",title:"Pour",drawing:e&&(()=>nn("pour",e)),result:e?ik(e):ae(`${sk()}.`),about:[["run","/pour"]],form:()=>r`${e?rk(e):ak()}
        <div class="more">${ar("pour")} ${sh(e)} ${Fs("pour")}</div>`})}function sk(){let e=F("run",`/pour/line/${lt()}`);return e?`${e} ${lt()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function rk(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>Wl(e,ah(e)+i);return r`<div class="side">
      ${tn("pour",e,ok(e))} ${ch(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${f({label:lh(),at:`/pour/line/${lt()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${P({key:"pour.each",label:"Weigh into each",shown:O(l.units,t.mass_each_g),note:`${x(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${P({key:"pour.mm",label:"1 mm more or less",shown:$e(l.units,t.ml_per_mm,2),note:`${_t(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${P({key:"set-up.pour.make",label:"Base to make",note:ee(e),shown:O(l.units,t.make_g),of:`${n}.make_g`})}
      ${P({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var ak=()=>r`<div class="side">
    ${ch()} ${I("run","/pour/line")}
    ${f({label:lh(),at:`/pour/line/${lt()}`,unit:"mm"})}
  </div>`,ar=e=>r`<button type="button" @click=${()=>Ve(e)}>
    Change the formula of the ${e==="pour"?"base":"topping"}
  </button>`;function ch(e){let t=n=>{if(n===lt())return;let o=e&&!l.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;L("run","pour line","/pour/line",{[n]:o===void 0?"":`${x(o,3)} mm`})};return re("The pour line is measured",lt(),[["below_brim","From the brim"],["depth","From the floor"]],t)}var lk=[0,50,80,100];function dh(e){let t=e?.pipe;return Le({name:"pipe",title:"Pipe",drawing:t&&(()=>nn("pipe",e)),result:t?uk(e,t):ae("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>t?ck(e,t):dk()})}function uk(e,t){let n=ee(e);return ae(r`Pipe <b>${x(t.volume_each_ml,0)} ml</b> on each, ${T(O(l.units,t.mass_each_g))} at this
      whipped density; make <b>${T(O(l.units,t.make_g))}</b>${n?` for ${n}`:""}.`)}function ck(e,t){return r`<div class="side">
      ${tn("pipe",e)}
      ${P({key:"pipe.each",label:"Topping on each",shown:$e(l.units,t.volume_each_ml),note:`${x(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${P({key:"set-up.pipe.make",label:"Topping to make",note:ee(e),shown:O(l.units,t.make_g),of:`${e.place}.pipe.make_g`})}
      ${P({key:"pipe.density",label:"Whipped density",note:`overrun ${x(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${ar("pipe")}
    </div>
    <div class="weights">${Xa(t)} ${hh()} ${pk(e)} ${$k(e)}</div>
    <div class="more">${Za(t)} ${Qa()}</div>`}var Ti=e=>e===0?"pipe":`pipe.whipping${e}`,Ri=(e,t)=>`${e.place}.pipe.whippings.${t}`;function ph(e,t){let n=ms(e,t);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function dk(){return r`<div class="more">${Za()}</div>
    <div class="side">${hh()} ${g("run","/pipe/whip_now")===void 0?u:fh()}</div>
    <div class="weights">${Xa()} ${ar("pipe")}</div>
    <div class="more">${Qa()}</div>`}var mh=e=>ee(e)?r`<small>${ee(e)}</small>`:u;function pk(e){return r`<h3>Today's bowl ${mh(e)}</h3>
    ${fh()} ${e.whippings.map((t,n)=>mk(e,t,n))}`}function mk(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${t.pieces} to make.`;return r`${ph(e,t)}
  ${o==null?u:P({key:`${Ti(n)}.now`,label:"Enough for",note:s,shown:[ie(o,"piece"),""],size:"weigh",of:`${Ri(e,n)}.pieces_now`})}
  ${hk(e,t,n)}`}function fh(){let e=g("run","/pipe/whip/holds"),t=e===void 0?hi():{holds:e,net:""};return Dt({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:t,body:fk})}function fk(){return r`<div class="row">
    ${f({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${gi("/pipe/whip_now")}
  </div>`}function hk(e,t,n){return t.readings?.length?A({name:`${Ti(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>gk(e,t,n)}):u}function gk(e,t,n){return r`<table class="readings">
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
        ${t.readings?.map(o=>r`<tr class=${o.planned?"planned":""}>
              <th scope="row">${x(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${x(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${kn(`${Ti(n)}.readings`,"Show the calculation",`${Ri(e,n)}.readings`)}`}function hh(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(F("run",e))?.[1]?.replace(",",".")),n=Ye("run",e);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${eo("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${lk.map(o=>r`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>W("run",e,`${o} %`)}
          >
            ${_k(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${f({label:"Headspace filled, as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function _k(e){let t=52*(e/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${M`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function $k(e){let t=e.whippings.map(i=>({one:i,words:wk(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?u:r`<h3>Limits of whisk, bowl and time ${mh(e)}</h3>
    ${t.map(({one:i,words:s})=>r`${ph(e,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${kn("pipe.limits","How the limits come about",`${Ri(e,0)}.limits`)}`}function wk({piping_s:e,lye_spoonfuls:t}){return[e?`${Vt(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${Vt(t.altogether_s)}`:""].filter(Boolean).join("; ")}function _h(e){return Le({name:"lye",title:"Lye",drawing:yk,result:e?gh(e).map(bk):ae("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${e?r`<div class="more jugs">${gh(e).map(vk)} ${xk(e)}</div>`:u}
        <div class="more">${Bf()} ${Ef(e)}</div>`})}function gh(e){let{pieces:t}=e.batch,n={slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:t,key:"pour"},o=e.whippings.map((i,s)=>{let a=ms(e,i);return{slot:"pipe",title:`Lye for the topping${a&&`, ${a}`}`,batter:i,place:Ri(e,s),pieces:t,key:Ti(s)}});return[n,...o]}function bk({title:e,batter:t,slot:n,pieces:o}){let i=qt(n,o).length?" \u26A0":"";return ae(r`${e}: ${x(t.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${Ke(t.superfat_percent.effective)}${i}</b>.`)}var yk=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${M`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function vk({slot:e,title:t,batter:n,place:o,pieces:i,key:s}){let{effective:a}=n.superfat_percent,c=qt(e,i).length>0,d=`danger-set-up-${s.replaceAll(".","-")}`,p=s===e;return r`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${P({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${x(n.water_to_pure_alkali,2)} : 1 to alkali; water ${x(n.water_percent_of_fats,1)} % of the fats`,shown:[`${x(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${P({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${Ke(a)}${c?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${ni(e,d,i)} ${$h(n.superfat_percent)} ${kk(n,o,s)}
    ${!p||g(e,"/superfat")===void 0?u:f({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:c?d:void 0,hint:l.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function $h(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:s}=e,a=`It lies between ${Ke(t)} and ${Ke(n)}, as lots, purity and scales may fall`,c=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Ke(o)} and ${Ke(i)}.`,d=s[0],p=d?r` Most of the doubt is ${d.cause}: ${d.remedy}.`:u;return ya(t)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${a}${c}
    ${d?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${a}${c} Some fat is left over even at the lowest.${p}</p>`}function kk(e,t,n){return e.heat?r`${wh(e.heat)} ${kn(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:u}function wh(e){let t=o=>T(mp(l.units,o)),n=e.cooling.map(o=>`${o.shortest_min*60?Vt(o.shortest_min*60):"at once"} to ${Vt(o.longest_min*60)} in ${o.in}`);return r`<p class="aside of-plan">
    Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at
    ${t(e.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function xk(e){let t=e.lye_pot;if(!t)return u;let{units:n}=l,o=(i,s,a,c,d="")=>P({key:`pot.${i}`,label:s,note:d,shown:a,size:"weigh",of:`${e.place}.lye_pot.${c}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${x(t.strength_percent,1)} %${ee(e)&&`; ${ee(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",te(n,ye(t,"water_")),"water_g")}
    ${t.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,te(n,ye(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",te(n,ye(t,"lye_")),"lye_g",Tk(t))}
    ${t.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,te(n,ye(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${Ke(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,te(n,ye(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${ni(s===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?$h(i.superfat):u}`)}
    ${t.left_g?r`<p class="aside of-plan">
            ${T(te(l.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${t.heat?wh(t.heat):u}
  </div>`}function Tk(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=ye(e,"lye_"),i=te(l.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${T(i)} with the pot: make up with water to that after cooling`}var Si=new Map,Rk=()=>Si.clear(),Sk=e=>typeof e?.owned=="number"?e.owned:void 0;function Hl(e){let t=Fe(e,l.files?.moulds);return Si.has(t)||(Si.set(t,void 0),Pk(t)),Si.get(t)}async function Pk(e){try{Si.set(e,Sk(oe((await he(e)).text))),z()}catch(t){if(!(t instanceof y))throw t}}async function bh(e,t){let n=Hl(e);n!==void 0&&(W("studio",t,n),E(`${n} kept in the studio`),await Ak(Fe(e,l.files?.moulds)),Y())}async function Ak(e){let t=await Oe(Me,e);t.shipped||t.theirs||(ge(t,C(t.now,"/owned",void 0)),await mt(t),Rk())}var Dk={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},yh=e=>({run:e,studio:e}),jl=e=>yh(`/losses/${e}`);function Nl(e,t){return Dk[e].map(({name:n,label:o,unit:i,optional:s})=>Se(yh(`/losses/${e}/${n}`),{label:t?`${t}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var Pn={run:"/money/currency",studio:"/currency"},Ul={run:"/money/prices",studio:"/prices"};function xh(){let[e,t]=[g("run",Pn.run),g("studio",Pn.studio)];return e!==void 0&&t!==void 0&&e!==t?[]:[Pn,Ul]}var vh=()=>l.plan?.piece.cost?.materials.map(e=>e.name)??[],kh=e=>l.fats.find(t=>t.id===e)?.name??e;function Th(){if(Tn(Pn)===void 0)return r`<button type="button" @click=${Mk}>Add what you paid</button>`;let e=(t,n)=>{let o=`/${Ae(t)}/${n}`;return{run:Ul.run+o,studio:Ul.studio+o}};return r`<div class="row">
      ${Se(Pn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${vh().map(t=>r`<div class="row">
            ${Se(e(t,"paid"),{label:`${kh(t)}, paid`,optional:!0,takes_part:!0,short:!0})}
            ${Se(e(t,"for"),{label:`for how much ${kh(t)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
          </div>`)}
    </div>
    ${vh().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function Mk(){let e=Re()?"studio":"run",t=e==="studio"?Pn.studio:Pn.run;L(e,"Prices added",t,"",me(e,t))}var To=e=>({run:e,studio:e}),zl=e=>({run:`/pipe/${e}`,studio:`/${e}`}),Ok=To("/scales"),Rh=To("/spoilage"),Fk=To("/pots");function Jl(e){return Le({name:"studio",title:"My studio",result:ae(Ck()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>Lk(e)})}function Ck(){let e=l.beside.studio?.file;return e?r`What is the same in every run, kept in ${e}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function Lk(e){let t=Bk(e),n=t.flatMap(o=>o.all);return r`${Re()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Va(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say.
            </p>`}
    <div class="studio-sections">
      ${t.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${mo(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>`}function Bk(e){let t=je(),n=[{title:"Scales",all:[Ok],body:Ek},{title:"Losses",all:[jl("pour"),...t?[jl("pipe")]:[]],body:()=>Ik(t,e)},{title:"Rejects",all:[Rh],body:Hk},{title:"Pot and lye jug",all:[Fk],body:jk},{title:"Moulds owned",all:Sh().map(({shared:o})=>o),body:Uk},{title:"Prices paid",all:xh(),body:Th}];return t&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(zl),body:Nk},{title:"Weigh-cups",all:[],body:lm}),Re()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[xo],body:Ll}),n}function Ek(){let e=(t,n)=>r`${Se(To(`/scales/${t}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:t==="large"?"scale_step":void 0})}
    ${Se(To(`/scales/${t}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${e("large","Large scale")} ${e("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function Ik(e,t){return r`<div class="row">
      ${Nl("pour",e?"Base":void 0)} ${e?Nl("pipe","Topping"):u}
    </div>
    ${t?Wk(t):u}`}function Wk({pour:e,pipe:t,...n}){let o=ee({pour:e,pipe:t,...n}),i=(s,{in_pieces_g:a,lost_g:c})=>`${s}: ${T(O(l.units,a))} in the pieces, ${T(O(l.units,c))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",e)} ${t?i("Topping",t):""}
  </p>`}var Hk=()=>Se(Rh,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function jk(){let e=(t,n,o)=>Se(To(`/pots/${t}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${e("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${e("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function Nk(){let e=(n,o,i,s=!1)=>Se(zl(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),t=n=>Tn(zl(n))!==void 0;return r`<div class="row">
    ${e("bowl/holds","Bowl holds","l",t("bowl/whisk_needs"))}
    ${e("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${e("bag_holds","One bag holds","ml")}
    ${e("lye_spoon/holds","Lye spoon holds","ml",t("lye_spoon/time_between"))}
    ${e("lye_spoon/time_between","From one spoonful to the next","s",t("lye_spoon/holds"))}
  </div>`}function Sh(){return["/pour",...S(fe).map((t,n)=>ko(n))].flatMap(t=>{let n=F("run",`${t}/mould`);return n?[{mould:n,shared:{run:vf(t),studio:`/moulds_owned/${Ae(Ka(n))}`}}]:[]})}function Uk(){return r`<div class="row">
    ${Sh().map(({mould:e,shared:t})=>{let n=l.files?.moulds.find(s=>s.file===e)?.name??e,o=Tn(t)===void 0?Hl(e):void 0,i=()=>{bh(e,`/moulds_owned/${Ae(Ka(e))}`)};return r`${Se(t,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&Re()?r`<button type="button" aria-label="Move the ${o} of ${n} into my studio" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function ql(e){let t=e&&Xn(e);return r`${Jk(e)}
    <div class="set-up">${Ph(t)} ${zk()} ${Jl(t)}</div>`}function Ph(e){return r`${uh(e)} ${je()?dh(e):u}
  ${Vf()?Yf(e):u} ${Kf()?Zf(e):u}
  ${Qe()?nh(e):u} ${_h(e)} ${Cl()?oh(e?.whole):u}`}function zk(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${je()?u:r`<button type="button" @click=${um}>Add a topping</button>${cm()}`}
      ${Cf()} ${Tf()}
      ${Cl()?u:r`<button type="button" @click=${If}>Draft the label</button>`}
    </div>
  </section>`}function Ah(e=u){return r`<div class="row">
    ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${co("Mould","/pour/mould",l.files?.moulds)}
    ${co("Base","/pour/formula",l.files?.formulas)}
    ${je()?co("Topping","/pipe/formula",l.files?.formulas):u} ${e}
  </div>`}function Jk(e){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof l.run.now.note=="string"?r`<p class="aside">${l.run.now.note}</p>`:u}
    ${Ah(e?qk(e):u)}
    <div class="batches">${e?Hf(e):u} ${Ml()}</div>
  </section>`}function qk(e){let{sell:t,make:n,fillings:o,cavities:i,casts:s,batches:a}=e.pieces,c=be(e)?`${a} batches, ${ie(o,"filling")}`:fs(o,i);return P({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${e.cut?"loaves":"casts"}, ${c}`:c,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"})}function Vk(){let t=(l.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>l.formulas[n]).filter(Kk);return[Ge({part:"Run"},()=>[Ah(),Ml()]),...t.map(n=>Ge({part:String(l.formulas[n].now.name||"Formula")},()=>qm(n))),Ph(),Jl()]}var Kk=(e,t,n)=>n.findIndex(o=>l.formulas[o]===l.formulas[e])===t;vp(Vk);var Gk={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function Dh(e){let t=s=>s.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(s=>!t(s))],o=s=>r`<ul>
      ${s.map(a=>r`<li class=${a.severity}><strong>${Gk[a.severity]??a.severity}</strong> ${a.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function Mh(e,t){let n=e?.batches.findIndex(({numbers:a})=>a.includes(t))??-1;if(!e||n<0)return;let o=e.batches[n],i=t===1,s=o.weigh_out.filter(({vessel:a})=>a!=="melt"||i);return{plan:e,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function Ro(e){let t=Gn(e);return t?.finished_at?"done":t||Yn(e)?"under way":"not begun"}var Yk=()=>Math.max(l.plan?.pieces.batches??0,...l.bench.batches.map(({batch:e})=>e));function Qk(e){let{chosen:t}=l.bench;if(t!==void 0&&t<=e)return t;let n=Array.from({length:e},(i,s)=>s+1),o=i=>n.find(s=>Ro(s)===i);return o("under way")??o("not begun")??1}function Vl(){let e=Yk(),t=Qk(e),n=Gn(t),o=Mh(l.plan,t);return{number:t,of:e,kept:n,planned:o,weights:n?Mh(n.plan,t):o}}var Ft=({kept:e})=>!e&&l.is_old,So=({plan:e,batch:t})=>e.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===t.pieces));var Zk=6,Xk={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Fh({number:e,of:t}){if(t<2)return u;let n=Array.from({length:t},(i,s)=>s+1),o=i=>`Batch ${i}, ${Ro(i)}`;return t>Zk?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>Oh(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===e}>${o(i)}</option>`)}
    </select>`:re("Which batch is weighed",String(e),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${Xk[Ro(i)]}</span> ${i}<small>
          ${Ro(i)}</small
        >`]),i=>Oh(Number(i)))}function Oh(e){wd(e),E(`Batch ${e}, ${Ro(e)}`)}var lr="";function Ch(e){let{kept:t,number:n}=e;if(!t)return u;if(t.finished_at)return ex(e,t.finished_at);let i=(e.weights?.vessels??[]).flatMap(a=>a.rows).filter(({key:a})=>!$n(n,a).is_done).length,s=()=>i?Lh(t.id):void sa(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Eh(t.begun_at)}; its weights stay as they were then.</p>
    ${lr===t.id?Bh(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{sa(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${Yn(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function ex({kept:e,number:t},n){let{id:o}=e;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Eh(n)}.</p>
    ${lr===o?Bh("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Vo(t)}):r`<button type="button" @click=${()=>Lh(o)}>Start this batch anew</button>`}
  </div>`}function Lh(e){lr=e,z(),de(N("batch-stays"))}function Bh(e,t,n){let o=()=>{lr="",z(),de(N("run-title"))};return r`<p><b>${e}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${t}</button>
    </div>`}var tx=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Eh=e=>tx.format(new Date(e));var nx={pour:"Base",pipe:"Topping"},Ih=e=>new Map(e.flatMap(t=>t.rows.map(n=>[n.key,{row:n,vessel:t}])));function Wh(e,t){let[n,o]=[Ih(e),Ih(t)],i=[...e,...t].some(({batter:p})=>p==="pipe"),s,a=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${nx[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},c=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${a(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),d=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${a(p)}, now ${p.row.shown}`);return[...c,...d]}var Kl=3,Gl=new Map,Yl="";function ox(e){let{kept:t,weights:n,planned:o,of:i}=e;if(!t||t.finished_at||!n)return;let{complaint:s}=l;if(s&&!Lu(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:Z(s)};if(!o){if(!l.plan)return;let p=i>1?`the run has no batch ${e.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let a=Wh(n.vessels,o.vessels),c=new Set(So(n).map(({text:p})=>p)),d=So(o).flatMap(({text:p})=>c.has(p)?[]:[p]);return a.length||d.length?{told:a,dangers:d,mark:o.mark}:void 0}function Hh(e){let t=ox(e),{kept:n}=e;if(!t||!n)return u;if(Gl.get(n.id)===t.mark)return rx(n.id);let o=t.dangers.length>0||t.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${ix(t)}
    </p>
    ${sx(t)}
    ${t.dangers.map(i=>r`<p class="danger"><strong>${wn}</strong> As it is now: ${i}</p>`)}
    ${Yl===n.id?ux(e):ax(e,t)}
  </div>`}function ix({told:e,refusal:t}){if(t!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${t}.`;let n=e.length-Kl;return r`${e.slice(0,Kl).join("; ")}${n>0?` and ${n} more.`:"."}`}var sx=({told:e})=>e.length>Kl?r`<details>
        <summary>All ${e.length} changes</summary>
        <p>${e.join("; ")}.</p>
      </details>`:u;function rx(e){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Gl.delete(e),z())}>What has changed</button>
  </div>`}function ax(e,{mark:t,refusal:n}){let{id:o}=e.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{Gl.set(o,t),z(),de(N("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>lx(e)}>Start this batch anew</button>`:u}
  </div>`}function lx(e){let{ticks:t,weigh_cup:n,id:o}=e.kept;if(!Object.keys(t).length&&n===void 0)return void Vo(e.number);Yl=o,z(),de(N("keep-weighing"))}function ux(e){let t=Object.keys(e.kept.ticks).length,n=()=>{Yl="",z(),de(N("run-title"))},o=()=>{n(),Vo(e.number)};return r`<p>
      <b>${t===1?"The 1 tick":`All ${t} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var jh=({text:e})=>r`<p class="danger"><strong>${wn}</strong> ${e}</p>`;function Nh(e){let t=new Set(l.dangers.run.map(({text:o})=>o)),n=So(e).filter(({text:o})=>!t.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(jh)}</div>`:u}var cx=({vessel:e})=>["lye","lye_pot","share"].includes(e),dx=({batter:e},t)=>!e||!t.batter||e===t.batter;function Uh(e,t){if(!cx(t))return u;let n=So(e).filter(o=>dx(o,t));return n.length?r`<div class="dangers">${n.map(o=>r`${jh(o)} ${px(o)}`)}</div>`:u}function px({batter:e,topic:t}){return!e||t==="heat"?r`<button type="button" class="to-cause" @click=${fx}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>mx(e)}>
    To the superfat of the ${e==="pour"?"base":"topping"}
  </button>`}function mx(e){Ve(e),requestAnimationFrame(()=>de(me(e,"/superfat")))}function fx(){h({view:"watch"}),de(N("watch-title"))}var Ql=(e,t)=>r`<p class="do ${Ft(e)?"old":""}">${t}</p>`;function zh(e,{batch:t,plan:n}){let{below_brim_mm:o,mass_each_g:i}=t.pour,s=o<.05?"Pour to the brim":`Pour to ${T(pe(l.units,o))} below the brim`;return Ql(e,r`${s}, <b>${T(O(l.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Jh(e,{batch:t}){let n=t.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Ql(e,r`Whip until the level weigh-cup holds <b>${T(O(l.units,n.net_g))}</b>.`):u}function qh(e,{batch:t}){let{pipe:n}=t;return n?Ql(e,r`Pipe <b>${x(n.volume_each_ml,0)} ml</b> on each, ${T(O(l.units,n.mass_each_g))} at the
      planned whipped density.`):u}function Vh(e,{shown:t,beside:n}){if(e==="both")return[t,n];let o=e==="us"?"oz":"g";return[$t(n)===o?n:t,""]}function Kh({batch:e,plan:t,place:n},o,i){switch(o.vessel){case"fats":case"lye":case"batter":return hx(o,i,e,n);case"layers":return gx(i,e.pour.layers??[],`${n}.pour.layers`);case"dust":return Zl(i.name,e.dust,`${n}.dust`);case"lye_pot":return i.role==="water"?`${n}.lye_pot.water_g`:Zl(i.name,e.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let s=t.decorations.length===1?0:-1;return s<0?void 0:`decorations.${s}.make_g`}case"share":return}}function Zl(e,t,n){let o=t.findIndex(i=>i.name===e);return o<0?void 0:`${n}.${o}.g`}function hx(e,t,n,o){let i=Number(/^pipe\.(\d+)\./.exec(e.key)?.[1]??1)-1,[s,a]=e.batter==="pipe"?[n.pipe?.whippings[i],`${o}.pipe.whippings.${i}`]:[n.pour,`${o}.pour`],c=(s?.ingredients??[]).findIndex(({name:d,goes_into:p})=>d===t.name&&p===e.vessel);return c<0?void 0:`${a}.ingredients.${c}.g`}function gx(e,t,n){let o=(t??[]).findIndex(({name:i})=>i===(e.adding??e.name));return o<0||!e.adding?o<0?void 0:`${n}.${o}.g`:Zl(e.name,t[o].colours,`${n}.${o}.colours`)}function Xl(e,t,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>$n(e.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${Gh(n)}>
    <div class="vessel-head">
      <h3 id=${Gh(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${Uh(t,n)}
    ${Zs(n.rows,({key:s})=>s,s=>_x(e,t,n,s))}
  </section>`}var Gh=({key:e})=>`vessel-${e.replaceAll(".","-")}`;function _x(e,t,n,o){let{is_done:i,is_waiting:s}=$n(e.number,o.key),[a,c]=Vh(l.units,o),d=Ft(e),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${H(i)}
        ?disabled=${e.kept?.finished_at!==void 0}
        @change=${_=>$x(e,t,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${d?"old":""}"><b>${a}</b>${c?r` <i>${c}</i>`:u}</span>
    </label>
    ${wx(e,t,n,o)}
  </div>`}function $x(e,{mark:t},n,o){if(!Ft(e))return gd(e.number,t,n.key,o.checked);o.checked=!o.checked,E("Not ticked: what is struck through is not to be weighed.")}function wx(e,t,n,o){let{planned:i}=e,s=i&&i.mark===t.mark?Kh(i,n,o):void 0;if(s===void 0)return u;let a=`weigh.${e.number}.${o.key}`,c=l.open.has(a),d=`sum-${a.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?d:u}
      @click=${()=>dt("open",a)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?r`<div class="sum" id=${d}>${ja(s)}</div>`:u}`}function eu(e,t){let n=e.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${t} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function Yh(e,t){let{planned:n,whip_today:o}=l;return!t||!n?void 0:(o?.of===n&&o.batch===e&&o.reading===t||bx(e,t),o?.batch===e&&o.reading===t?o:void 0)}var tu=!1;async function bx(e,t){let{planned:n}=l;if(tu||!n)return;tu=!0;let o={of:n,batch:e,reading:t},i={holds:$(n.run,"/pipe/whip/holds")??"",net:t};try{let s=await Hi({...n,run:C(n.run,"/pipe/whip_now",i)});h({whip_today:{...o,...yx(s,e)}})}catch(s){if(!(s instanceof y))throw s;h({whip_today:{...o,complaint:Z(s.complaint)}})}finally{tu=!1}}function yx(e,t){let n=e.batches.find(({numbers:o})=>o.includes(t));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var ou,nu,vx=e=>ou??($t(e)==="oz"||!e&&l.units==="us"?"oz":"g");function Qh(e,t){let n=t.batch.pipe?.whippings??[];if(!n.some(a=>a.readings.length))return u;let o=oa(e.number),i=vx(o),s=e.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${St("weigh_cup")}</div>
    ${rt("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${H(nu??o)}
        ?disabled=${s}
        @input=${a=>nu=a.target.value}
        @change=${a=>xx(e,t,a.target.value,i)}
      />
      ${re("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],kx)}
    </div>
    ${Tx(e,t,n,o)} ${Sx(t,n)}
  </div>`}function kx(e){ou=e,z()}function xx(e,{mark:t},n,o){nu=void 0;let i=no(n)?`${n.trim()} ${o}`:n.trim();if(ou=void 0,i===oa(e.number))return z();if(Ft(e))return E("Not taken: the weights are not those of what is typed."),z();_d(e.number,t,i)}function Tx(e,t,n,o){if(!o)return u;let i=Yh(e.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==t.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,a)=>r`<p>${Rx(s,i.pieces?.[a]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function Rx({pieces:e,count:t},n){if(n===null)return u;let o=t>1?"Each of these bowls pipes":"This bowl pipes",i=e-n;return r`${o} <b>${ie(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${e} to make.`}`}function Sx(e,t){let n=e.plan.cut?"casts":"pieces";return r`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${t.map(o=>r`<table class="readings">
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
                  <th scope="row">${T(O(l.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${x(i.overrun_percent,0)} %</td>
                  <td>${e.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Pi="pour",Zh=()=>Vl().kept!==void 0;function Xh(){pd();let e=Vl(),t=l.bench.version!==void 0||l.bench.failed!==void 0;return r`<section class="weighing" data-part=${Pi} aria-labelledby="run-title">
    ${Px(e)} ${Dx(e)}
    ${e.weights&&t?r`${Nh(e.weights)} ${Hh(e)} ${Mx(e,e.weights)}`:u}
    ${Ch(e)}
  </section>`}function Px(e){let{weights:t}=e;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${t?.plan.run??String(l.run.now.name??"")}</h1>
    ${t?r`<p class="which">${Ax(e,t)}</p>`:u}
    <div class="row">
      ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Fh(e)}
    </div>
  </div>`}function Ax(e,{plan:t,batch:n,vessels:o}){let i=o.flatMap(c=>c.rows),s=i.filter(({key:c})=>$n(e.number,c).is_done).length,a=e.of>1?`Batch ${e.number} of ${e.of}: `:"";return r`<b>${a}${gt(t,n)}</b>, ${s} of ${i.length} weighed`}function Dx({number:e,weights:t}){let{failed:n,unsent:o,told:i,complaints:s,version:a}=l.bench,c=o!==void 0&&Yn(e);return r`<div class="bench-told" role="status">
    ${i?.batch===e?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${bd}>I have looked</button>`:u}
    ${c?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(d=>r`<p class="alarm">${d}</p>`)}
    ${t||n!==void 0?u:r`<p class="hint">
            ${l.complaint?"No weights before this is corrected.":a===void 0?"Reading ...":""}
          </p>`}
  </div>`}function Mx(e,t){let{vessels:n}=t,o=p=>n.filter(m=>m.batter===p),i=o(),s=i.filter(p=>p.day_before),a=i.filter(p=>!p.day_before),c=o("pipe").length>0,d=p=>p.map(m=>Xl(e,t,m));return r`${Ex(c,i)}
    <div class="batters ${c?"two":""}">
      ${ur("ahead","To have ready",d(s))}
      ${ur("base",c?"Base":"Batter",Ox(e,t,o("pour"),s))}
      ${c?ur("topping","Topping",[...d(o("pipe")),Lx(e,t),eu(o("pipe"),Cx(e,t))]):u}
      ${ur("after","At the end",d(a))}
    </div>`}var ur=(e,t,n)=>n.some(o=>o!==u)?r`<div class="part-of ${e}">
        <h2 id="weigh-${e}">${t}</h2>
        ${n}
      </div>`:u;function Ox(e,t,n,o){let i=({vessel:a})=>a==="layers",s=a=>a.map(c=>Xl(e,t,c));return[...s(n.filter(a=>!i(a))),zh(e,t),...s(n.filter(i)),eu([...o,...n],Fx(e,t))]}var eg=(e,t,n=u)=>r`<p class=${Ft(e)?"old":""}>
    <b>Superfat as weighed:</b> ${t.map(o=>Ke(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,Fx=(e,{batch:t})=>eg(e,[t.pour],eo("superfat_as_weighed")),Cx=(e,{batch:t})=>eg(e,t.pipe?.whippings??[]),Lx=(e,t)=>r`${Jh(e,t)} ${Qh(e,t)} ${qh(e,t)}`,Bx={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function Ex(e,t){let n=[...new Set(t.flatMap(({vessel:i})=>Bx[i]??[]))].join(", ").toLowerCase(),o=[["pour",e?"Base":"Batter"],...e?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===Pi)||(Pi="pour"),r`<div class="narrow">${re("What is shown",Pi,o,Ix)}</div>`)}function Ix(e){Pi=e,z(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var tg=()=>r`${_o(Zh()?"No new weights can be given.":void 0)} ${Xh()}`;var Wx={"set-up":ql,watch:Dh,money:pf,mould:gf,print:yf};function ng(e){let t=r`${ns().map(o=>io(o))} ${ts().map(so)}`;if(e==="weigh")return r`${t} ${tg()}`;let{plan:n}=l;return r`${t} ${_o()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(l.run.now.name??"")}</h1>
    ${n?Wx[e](n):Hx(e)}`}function Hx(e){return l.complaint?e==="set-up"?ql():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var jx=()=>{h({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function ig(){let e=l.new_run;if(!e)return r`<p class="choice"><button type="button" class="strong" @click=${jx}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=Ls(e.sell),s=t.trim()&&n&&o&&i,a=()=>{Ce(async()=>{await cs({name:t.trim(),mould:n,formula:o,sell:i}),h({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${H(t)}
          @input=${c=>v(e,{name:c.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${og(e,"mould","Mould",Nx())} ${og(e,"formula","Base",Ux())}
      ${Bs("new-run-sell",e.sell,c=>v(e,{sell:c}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${a}>Make the run</button>
      <button type="button" @click=${()=>h({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var Nx=()=>[...(l.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...l.catalogue.map(e=>[e.path,e.name])],Ux=()=>(l.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function og(e,t,n,o){let i=`new-run-${t}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${a=>v(e,{[t]:a.target.value})}>
      <option value="" .selected=${H(e[t]==="")}>choose ...</option>
      ${o.map(([a,c])=>r`<option value=${a} .selected=${H(a===e[t])}>${c}</option>`)}
    </select>
  </div>`}var zx=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function rg(){let e=l.files?.runs??[],t=e.filter(o=>!o.shipped).sort(zx),n=e.filter(o=>o.shipped);return r`${$o("Runs")} ${ig()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?Sn(t,sg):r`<p class="aside">No runs of your own in ${l.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Sn(n,sg)}
    </section>`}function sg(e){let{pieces:t,mould:n,due:o,made_on:i,changed:s}=e,a=[t===void 0?"":ie(t,"piece"),n??"",o?`due ${oo(o)}`:"",i?`made ${oo(i)}`:s?`changed ${oo(s)}`:""].filter(Boolean);return wo({kind:pn,one:e,facts:a,picture:Jx(n),open:()=>Jt(e.file)})}var Jx=e=>l.files?.moulds.find(t=>t.name===e)?.file??l.catalogue.find(t=>t.name===e)?.path;var ug=document.getElementById("page");function cg(){let{view:e,fault:t}=l;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${lf()} ${op()}
    <main id="main" tabindex="-1" data-view=${e} class=${l.is_old&&!qe(e)?"old-now":""}>
      ${t?r`${e==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${t}</p>`:u}
      ${Vx()}
    </main>
    <p class="unseen" role="status">${l.announcement}</p>`}var qx={runs:rg,formulas:Xm,moulds:ef};function Vx(){let{view:e,fault:t}=l;return ft(e)?ng(e):qe(e)?qx[e]():e==="formula"?Jm():t?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Tu(()=>{Cm(),ut(cg(),ug),Yx()});ut(cg(),ug);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||qe(l.view)&&!l.mould)return;e.preventDefault();let{undo:t,redo:n}=Xs();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Cd();j(l.run)&&ot()});function Kx(){if(!l.run.file)return iu();h({fault:void 0}),j(l.run)&&ot(),Y()}function iu(){h({fault:void 0}),Nm().catch(e=>{h({fault:Gx(e)}),e instanceof y&&e.may_pass&&window.setTimeout(iu,2e3)})}function Gx(e){return e instanceof y&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}var ag=new ResizeObserver(([{target:e}])=>dg(e.offsetHeight)),lg=null;function Yx(){let e=document.querySelector(".foremost");e!==lg&&(ag.disconnect(),e?ag.observe(e):dg(0),lg=e)}var dg=e=>document.documentElement.style.setProperty("--foremost",`${e}px`);ep();jm();Au(e=>{go(),e&&Kx()});iu();
