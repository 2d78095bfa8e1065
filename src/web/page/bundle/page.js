var Jo=globalThis,Go=Jo.ShadowRoot&&(Jo.ShadyCSS===void 0||Jo.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,sl=Symbol(),rl=new WeakMap,Ko=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==sl)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(Go&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=rl.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&rl.set(n,t))}return t}toString(){return this.cssText}},al=e=>new Ko(typeof e=="string"?e:e+"",void 0,sl);var ll=(e,t)=>{if(Go)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=Jo.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},vr=Go?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return al(n)})(e):e;var{is:Rf,defineProperty:Sf,getOwnPropertyDescriptor:Af,getOwnPropertyNames:Pf,getOwnPropertySymbols:Df,getPrototypeOf:Mf}=Object,Yo=globalThis,ul=Yo.trustedTypes,Of=ul?ul.emptyScript:"",Ff=Yo.reactiveElementPolyfillSupport,no=(e,t)=>e,kr={toAttribute(e,t){switch(t){case Boolean:e=e?Of:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},pl=(e,t)=>!Rf(e,t),cl={attribute:!0,type:String,converter:kr,reflect:!1,useDefault:!1,hasChanged:pl};Symbol.metadata??=Symbol("metadata"),Yo.litPropertyMetadata??=new WeakMap;var ot=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=cl){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&Sf(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=Af(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let c=i?.call(this);r?.call(this,l),this.requestUpdate(t,c,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??cl}static _$Ei(){if(this.hasOwnProperty(no("elementProperties")))return;let t=Mf(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(no("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(no("properties"))){let n=this.properties,o=[...Pf(n),...Df(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(vr(i))}else t!==void 0&&n.push(vr(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return ll(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:kr).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:kr;this._$Em=i;let c=l.fromAttribute(n,r.type);this[i]=c??this._$Ej?.get(i)??c,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??pl)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,c=this[i];l!==!0||this._$AL.has(i)||c===void 0||this.C(i,void 0,r,c)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};ot.elementStyles=[],ot.shadowRootOptions={mode:"open"},ot[no("elementProperties")]=new Map,ot[no("finalized")]=new Map,Ff?.({ReactiveElement:ot}),(Yo.reactiveElementVersions??=[]).push("2.1.2");var Tr=globalThis,dl=e=>e,Qo=Tr.trustedTypes,ml=Qo?Qo.createPolicy("lit-html",{createHTML:e=>e}):void 0,Rr="$lit$",it=`lit$${Math.random().toFixed(9).slice(2)}$`,Sr="?"+it,Cf=`<${Sr}>`,Wt=document,io=()=>Wt.createComment(""),ro=e=>e===null||typeof e!="object"&&typeof e!="function",Ar=Array.isArray,bl=e=>Ar(e)||typeof e?.[Symbol.iterator]=="function",xr=`[ 	
\f\r]`,oo=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,fl=/-->/g,hl=/>/g,Lt=RegExp(`>|${xr}(?:([^\\s"'>=/]+)(${xr}*=${xr}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),gl=/'/g,_l=/"/g,wl=/^(?:script|style|textarea|title)$/i,Pr=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=Pr(1),F=Pr(2),Zy=Pr(3),ge=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),$l=new WeakMap,Bt=Wt.createTreeWalker(Wt,129);function yl(e,t){if(!Ar(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return ml!==void 0?ml.createHTML(t):t}var vl=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=oo;for(let c=0;c<n;c++){let p=e[c],d,h,g=-1,w=0;for(;w<p.length&&(l.lastIndex=w,h=l.exec(p),h!==null);)w=l.lastIndex,l===oo?h[1]==="!--"?l=fl:h[1]!==void 0?l=hl:h[2]!==void 0?(wl.test(h[2])&&(i=RegExp("</"+h[2],"g")),l=Lt):h[3]!==void 0&&(l=Lt):l===Lt?h[0]===">"?(l=i??oo,g=-1):h[1]===void 0?g=-2:(g=l.lastIndex-h[2].length,d=h[1],l=h[3]===void 0?Lt:h[3]==='"'?_l:gl):l===_l||l===gl?l=Lt:l===fl||l===hl?l=oo:(l=Lt,i=void 0);let v=l===Lt&&e[c+1].startsWith("/>")?" ":"";r+=l===oo?p+Cf:g>=0?(o.push(d),p.slice(0,g)+Rr+p.slice(g)+it+v):p+it+(g===-2?c:v)}return[yl(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},so=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,c=t.length-1,p=this.parts,[d,h]=vl(t,n);if(this.el=e.createElement(d,o),Bt.currentNode=this.el.content,n===2||n===3){let g=this.el.content.firstChild;g.replaceWith(...g.childNodes)}for(;(i=Bt.nextNode())!==null&&p.length<c;){if(i.nodeType===1){if(i.hasAttributes())for(let g of i.getAttributeNames())if(g.endsWith(Rr)){let w=h[l++],v=i.getAttribute(g).split(it),A=/([.?@])?(.*)/.exec(w);p.push({type:1,index:r,name:A[2],strings:v,ctor:A[1]==="."?Xo:A[1]==="?"?ei:A[1]==="@"?ti:Ht}),i.removeAttribute(g)}else g.startsWith(it)&&(p.push({type:6,index:r}),i.removeAttribute(g));if(wl.test(i.tagName)){let g=i.textContent.split(it),w=g.length-1;if(w>0){i.textContent=Qo?Qo.emptyScript:"";for(let v=0;v<w;v++)i.append(g[v],io()),Bt.nextNode(),p.push({type:2,index:++r});i.append(g[w],io())}}}else if(i.nodeType===8)if(i.data===Sr)p.push({type:2,index:r});else{let g=-1;for(;(g=i.data.indexOf(it,g+1))!==-1;)p.push({type:7,index:r}),g+=it.length-1}r++}}static createElement(t,n){let o=Wt.createElement("template");return o.innerHTML=t,o}};function It(e,t,n=e,o){if(t===ge)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=ro(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=It(e,i._$AS(e,t.values),i,o)),t}var Zo=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??Wt).importNode(n,!0);Bt.currentNode=i;let r=Bt.nextNode(),l=0,c=0,p=o[0];for(;p!==void 0;){if(l===p.index){let d;p.type===2?d=new un(r,r.nextSibling,this,t):p.type===1?d=new p.ctor(r,p.name,p.strings,this,t):p.type===6&&(d=new ni(r,this,t)),this._$AV.push(d),p=o[++c]}l!==p?.index&&(r=Bt.nextNode(),l++)}return Bt.currentNode=Wt,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},un=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=It(this,t,n),ro(t)?t===u||t==null||t===""?(this._$AH!==u&&this._$AR(),this._$AH=u):t!==this._$AH&&t!==ge&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):bl(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==u&&ro(this._$AH)?this._$AA.nextSibling.data=t:this.T(Wt.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=so.createElement(yl(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new Zo(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=$l.get(t.strings);return n===void 0&&$l.set(t.strings,n=new so(t)),n}k(t){Ar(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(io()),this.O(io()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=dl(t).nextSibling;dl(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},Ht=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=It(this,t,n,0),l=!ro(t)||t!==this._$AH&&t!==ge,l&&(this._$AH=t);else{let c=t,p,d;for(t=r[0],p=0;p<r.length-1;p++)d=It(this,c[o+p],n,p),d===ge&&(d=this._$AH[p]),l||=!ro(d)||d!==this._$AH[p],d===u?t=u:t!==u&&(t+=(d??"")+r[p+1]),this._$AH[p]=d}l&&!i&&this.j(t)}j(t){t===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},Xo=class extends Ht{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===u?void 0:t}},ei=class extends Ht{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==u)}},ti=class extends Ht{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=It(this,t,n,0)??u)===ge)return;let o=this._$AH,i=t===u&&o!==u||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},ni=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){It(this,t)}},kl={M:Rr,P:it,A:Sr,C:1,L:vl,R:Zo,D:bl,V:It,I:un,H:Ht,N:ei,U:ti,B:Xo,F:ni},Ef=Tr.litHtmlPolyfillSupport;Ef?.(so,un),(Tr.litHtmlVersions??=[]).push("3.3.3");var Ue=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new un(t.insertBefore(io(),r),r,void 0,n??{})}return i._$AI(e),i};var Dr=globalThis,cn=class extends ot{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=Ue(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return ge}};cn._$litElement$=!0,cn.finalized=!0,Dr.litElementHydrateSupport?.({LitElement:cn});var Lf=Dr.litElementPolyfillSupport;Lf?.({LitElement:cn});(Dr.litElementVersions??=[]).push("4.2.2");var xl=()=>{},Mr=!1;function Tl(e){xl=e}function L(){Mr||(Mr=!0,queueMicrotask(()=>{Mr=!1,xl()}))}function Rl(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}function $(e,t){let n=e;for(let o of Rl(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function B(e,t,n){return Or(e,Rl(t),n)}function Or(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let c=[...e],p=Or(c[Number(o)],i,n);return p===void 0?c.splice(Number(o),1):c[Number(o)]=p,c}let r={...e??{}},l=Or(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var Sl={};function ze(e,t){(Sl[e]??=[]).push(t)}function fe(e,t){for(let n of Sl[e]??[])n(t)}var Fr=()=>/^#([0-9a-f]{48})$/.exec(location.hash)?.[1],oi="";function Al(e){oi=e,sessionStorage.setItem("key",e)}Al(Fr()??sessionStorage.getItem("key")??"");var Pl=()=>Fr()!==void 0;function Dl(e){addEventListener("hashchange",()=>{let t=Fr();if(!t)return;let n=t!==oi;Al(t),e(n)})}var Ml={status:0,body:new Blob};async function Bf(e,t,n,o){try{let i=await fetch(t,{method:e,body:n,headers:{"X-Bench-Key":oi},signal:o});return{status:i.status,body:await i.blob()}}catch{return Ml}}function Wf(e,t,n,o){return new Promise(i=>{let r=new XMLHttpRequest;r.open(e,t),r.setRequestHeader("X-Bench-Key",oi),r.responseType="blob",r.upload.onprogress=l=>o(l.total?l.loaded/l.total:0),r.onerror=()=>i(Ml),r.onload=()=>i({status:r.status,body:r.response}),r.send(n)})}var Ol={send:(e,t,n,o,i)=>n!==void 0&&o?Wf(e,t,n,o):Bf(e,t,n,i)};var If=Ol,J=({problem:e,remedy:t})=>[e,t].filter(Boolean).join("; "),y=class extends Error{constructor(n,o,i={}){super(o.line);this.status=n;this.complaint=o;this.answer=i}status;complaint;answer;get may_pass(){return this.status===0||this.status===503}},El={file:"",field:"",problem:"Brimwright is not running",remedy:"start brimwright again and open the address it prints; what you typed is kept here",line:"Brimwright is not running: start it again and open the address it prints. What you typed is kept here."},Ll=e=>e===El||e.is_fault===!0,Fl="what you typed is kept here";function Hf(e){let[t,n]=e===503?["the program has too much to do at once",`it is asked again in a moment; ${Fl}`]:["internal error in brimwright (your files are not at fault)",`${Fl}: change something, or ask again`];return{file:"",field:"",problem:t,remedy:n,line:`${t} (answer ${e}); ${n}.`}}function Cl(e,t){if(e===0)return new y(0,El);let n=Hf(e),o={...n,...t.complaint};return e>=500&&Object.assign(o,{is_fault:!0,remedy:o.remedy||n.remedy}),new y(e,o,t)}async function jf(e,t){try{return Cl(e,JSON.parse(await t.text()))}catch{return Cl(e,{})}}async function Bl(...e){let{status:t,body:n}=await If.send(...e);if(t>=200&&t<300)return n;throw await jf(t,n)}var rt=async(...e)=>JSON.parse(await(await Bl(...e)).text()),he=(e,t)=>rt("POST",e,JSON.stringify(t)),mt=()=>rt("GET","/api/files"),ce=e=>rt("GET",`/api/file?file=${encodeURIComponent(e)}`),ii=e=>rt("PUT","/api/file",JSON.stringify(e)),Wl=(e,t)=>he("/api/file/rename",{file:e,to:t}),Cr=(e,t=!1)=>he("/api/file/remove",{file:e,even_so:t}),Il=e=>he("/api/file/restore",{removed:e}),Hl=e=>e?`&run=${encodeURIComponent(e.run)}&bench=${encodeURIComponent(e.version)}`:"",Nf=12e3,Uf=([e,t])=>`&${encodeURIComponent(`file:${e}`)}=${t??""}`;async function pn(e,t){let n={changed:{},unreadable:[]},o=`/api/changed?wait=0${Hl(t)}`;for(let i of jl(e)){let{changed:r,unreadable:l,bench:c}=await rt("GET",o+i);Object.assign(n.changed,r),n.unreadable.push(...l),n.bench=c}return n}function jl(e){let t=[""];for(let n of[...e].map(Uf))t.at(-1).length+n.length>Nf?t.push(n):t[t.length-1]+=n;return t}var zf=crypto.randomUUID(),Er=2e4;async function Nl(e,t,n){let[o,...i]=jl(e);if(i.length)return pn(e,t);let l=`/api/changed?${`wait=${Er/1e3}&tab=${zf}`}${Hl(t)}${o}`;return rt("GET",l,void 0,void 0,n)}var ri=e=>he("/api/plan",e),Ul=e=>he("/api/plan",{...e,explain:!0}),zl=e=>he("/api/gauge",{...e,inspect:!0}),Ve=e=>he("/api/gauge",e),Lr=e=>he("/api/list",{what:e}),Vl=async()=>(await Lr("fats")).fats,ql=async()=>(await Lr("moulds")).moulds,Jl=async()=>(await Lr("tips")).tips,ft=e=>Bl("POST","/api/document",JSON.stringify(e)),Kl=async e=>(await he("/api/document",{...e,open:!0})).address,Gl=(e,t)=>rt("POST",`/api/mesh?name=${encodeURIComponent(e.name)}`,e,t),Yl=async(e,t)=>(await he("/api/keep",{upload:e,as:t})).file;var le=["pour","pipe","apart"];var X=e=>`${JSON.stringify(e,null,2)}
`;function te(e){try{let t=JSON.parse(e??"");return t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0}catch{return}}var jt=e=>e.slice(0,e.lastIndexOf("/")+1),Nt=e=>e.slice(e.lastIndexOf("/")+1),Ql=(e,t)=>{let n=jt(e);return n?Vf(n+t):t};function Vf(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function ht(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function dn(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|formula))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var qf=["mould","formula","file","own_fats","own_tips"];function Br(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?Br(o,i):qf.includes(n)?[i]:[]})}function Wr(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...Br(e)])[n,o]=[B(n,i,void 0),B(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Ir(e,t){let n=["/id",...Br(e)].filter(o=>$(e,o)!==$(t,o));return o=>n.reduce((i,r)=>$(i,r)===$(e,r)?B(i,r,$(t,r)):i,o)}var I=(e,t)=>({name:e,label:t,unit:"mm"}),gt=I("height","Floor to brim"),si={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Hr={block:{words:"Box, loaf or slab",measures:[I("length","Longer side at the brim"),I("width","Shorter side"),gt,si,{...I("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[I("floor_diameter","Across the floor"),I("brim_diameter","Across the brim"),gt]},fluted_cup:{words:"Fluted cup",measures:[I("floor_diameter","Across the floor"),I("brim_diameter","Across the brim"),gt,{name:"flutes",label:"Flutes",unit:"",count:!0},I("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},I("across_flats","Across the flats"),gt,si]},dome:{words:"Bowl",measures:[I("diameter","Across the brim"),gt]},half_ball:{words:"Half ball",measures:[I("diameter","Across the brim")]},ball:{words:"Ball",measures:[I("diameter","Across")]},half_ring:{words:"Half ring",measures:[I("centre_diameter","Ring, middle to middle of the tube"),I("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[I("outer_floor_diameter","Cup, across the floor"),I("outer_brim_diameter","Cup, across the brim"),I("post_floor_diameter","Post, at its foot"),I("post_brim_diameter","Post, at its top"),gt]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[I("height","Height"),I("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[gt,si],points:{columns:[I("x","From the left"),I("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[I("side","Straight edge, tip to round"),gt,si]}},Zl=Object.fromEntries(Object.entries(Hr).map(([e,{words:t}])=>[e,t])),mn=e=>Hr[e]?.measures??[],_t=e=>Hr[e]?.points;var jr=(e,t)=>String($(e,t)??"").trim(),ao=e=>jr(e,"/shape/kind"),Ce=(e,t)=>$(e,`/${t}`)!==void 0,Nr=e=>["body","skin"].includes(jr(e,"/mesh/role"));function ye(e,t){let n=$(e,t);return Array.isArray(n)?n:[]}function Xl(e,t){return(_t(ao(e))?.columns??[]).map(({name:o})=>String($(t,`/${o}`)??"").trim())}function lo(e){return ye(e,"/shape/points").flatMap((t,n)=>Xl(e,t).every(Boolean)?[n]:[])}function ai(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return ye(e,"/shape/points").flatMap((n,o)=>t(Xl(e,n))?[o]:[])}var Ur=e=>ye(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function eu(e){let t=e,n=(o,i)=>{if(!Array.isArray($(t,o)))return;let r=i.map(l=>$(e,`${o}/${l}`));t=B(t,o,r)};return _t(ao(e))&&n("/shape/points",lo(e)),n("/water/weighings",Ur(e)),t}function li(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?lo(e):Ur(e);return`${n}/${r[Number(o)]??o}${i}`}function uo(e){let t=[],n=i=>jr(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(Ce(e,"shape")){let i=ao(e);o(i!=="","the shape");for(let{name:l,label:c,optional:p}of mn(i))o(p||n(`/shape/${l}`),c.toLowerCase());let r=_t(i);r&&o(lo(e).length>=r.least,`${r.least} points at least`)}if(Ce(e,"water")){o(n("/water/temperature"),"the water's temperature"),o($(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Ur(e).length>0,"a weighing of water")}return!Nr(e)&&!Ce(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var Ut={name:"run",list:"runs",new_name:({shipped:e,file:t,now:n})=>e?Nt(t):ht(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},fn={name:"formula",list:"formulas",new_name:({shipped:e,file:t,now:n})=>e?Nt(t):ht(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},De={name:"mould",list:"moulds",new_name:({now:e})=>ht(String(e.name),".json"),written:e=>({...eu(e),name:String(e.name??"").trim()}),is_begun:e=>Ce(e,"shape")||Ce(e,"mesh")};var tu={kind:Ut,id:"",file:"",version:null,shipped:!1,now:{},saved:void 0,unanswered:[]},qe={view:"reading",came_from:"set-up",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:tu,formulas:{},past:[],future:[],batch:0,is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},open:new Set,folded:new Set,units:Jf(),announcement:""},a=qe;function Jf(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}function f(e){Object.assign(qe,e),L()}var H=e=>f({announcement:e});function b(e,t){Object.assign(e,t),L()}function st(e,t){let{[e]:n,...o}=qe.formulas;f({formulas:t?{...o,[e]:t}:o})}function Je(e,t){let n=new Set(qe[e]);n.delete(t)||n.add(t),f({[e]:n})}function ui(e=tu){f({run:e,formulas:{},past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,batch:0,complaint:void 0,typed:void 0,measured:void 0})}function zr(e){qe.open.has(e)||f({open:new Set(qe.open).add(e)})}function ci(e,t,{name:n,note:o}={}){if(!qe.files)return;let i={file:t,name:String(n??""),note:String(o??""),shipped:!1},r=qe.files[e].filter(c=>c.file!==t),l=qe.files[e].findIndex(c=>c.file===t);r.splice(l<0?r.length:l,0,i),f({files:{...qe.files,[e]:r}})}async function $t({kind:e,name:t,text:n,from:o,about_to:i,is_own:r}){for(;;){let{runs:l=[],formulas:c=[],moulds:p=[]}=a.files??{},d=dn(t,[...l,...c,...p]);i?.(d);let h=await Kf(d,n,o);if(ci(e.list,d,te(h.there.text)??{name:d}),h.is_new||r?.(h.there))return h.there}}async function Kf(e,t,n){try{return{is_new:!0,there:await ii({file:e,version:null,text:t,from:n})}}catch(o){if(!(o instanceof y)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var pi=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function zt({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let c={id:t,file:n,version:o,shipped:i,text:X(r),copy:l};localStorage.setItem(pi(e)+t,JSON.stringify(c))}catch{}}function Vr(e,t){try{return JSON.parse(localStorage.getItem(pi(e)+t)??"null")??void 0}catch{return}}var Vt=(e,t)=>localStorage.removeItem(pi(e)+t);function di(e){let t=pi(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>Vr(e,o)??[])}var Gf=300,U=e=>e.now!==e.saved;function co(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function Ke(e,t,n=t){let o=await ce(t),i=Yf(e,JSON.parse(o.text),o.shipped),r=Vr(e,n),l=r?.copy&&o.shipped?await Qf(e,r,i):void 0;if(l)return Vt(e,n),Ke(e,l);let{version:c,shipped:p=!1}=o,d={kind:e,id:n,file:t,version:c,shipped:p,now:i,saved:i,unanswered:[]};return r&&Zf(d,r,o),d}var Yf=(e,t,n=!1)=>e.name==="run"&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function Qf(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=te(t.text),i=te((await ce(t.copy)).text);if(!(!o||!i||X(o)===X(n)))return Wr(e.written(o),i)?t.copy:void 0}function Zf(e,t,n){let o=te(t.text);if(!o||X(o)===X(e.now))return Vt(e.kind,e.id);b(e,{now:o}),!(t.version===n.version||n.shipped)&&(b(e,{version:t.version}),cu(e,n))}function ve(e,t){let n=e.now;b(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),zt(e),fe("edited",{file:e,before:n})}var nu=new WeakMap,qr=async e=>nu.get(e),qt=e=>iu(e,()=>Xf(e)),ou=e=>iu(e,()=>e.shipped?ru(e,su):Promise.resolve());function iu(e,t){let n=qr(e).then(t);return nu.set(e,n.catch(()=>{})),n}async function Xf(e){!U(e)||e.theirs||await ru(e,e.shipped||!e.file?su:au)}async function ru(e,t){b(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof y&&b(e,{failed:J(n.complaint)}),n}}async function su(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await $t({kind:t,name:t.new_name(e),text:X(r),from:i,about_to:h=>zt(e,h),is_own:({text:h})=>i!==void 0&&Wr(r,te(h)??{})}),c=JSON.parse(l.text),p=Ir(r,c),d=e.now===o?c:p(e.now);Vt(t,n),b(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:d,saved:c}),U(e)&&zt(e),i!==void 0&&fe("copied",{file:e,from:i,renamed:p})}async function au(e){let{version:t,now:n}=e,o=X(e.kind.written(n));b(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{mi(e,n,(await ii({file:e.file,version:t,text:o})).version)}catch(i){if(!(i instanceof y)||i.status!==409)throw i;lu(e,i.answer),U(e)&&!e.theirs&&await au(e)}}function mi(e,t,n){b(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),U(e)?zt(e):Vt(e.kind,e.id),ci(e.kind.list,e.file,t)}function lu(e,{version:t,text:n}){if(n===X(e.kind.written(e.now)))return mi(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(b(e,{unanswered:[]}),o)return b(e,{version:t,saved:void 0,theirs:void 0});let i=U(e)||e.theirs?void 0:te(n);i?eh(e,i,t):cu(e,{version:t,text:n})}function eh(e,t,n){fe("giving_way",{file:e}),b(e,{set_aside:e.now,is_taken:!0,now:t}),mi(e,t,n),H(`${e.file} was changed outside this page, and stands here as it is now.`),fe("gave_way",{file:e})}var uu=e=>b(e,{set_aside:void 0,is_taken:void 0});function cu(e,{version:t,text:n}){b(e,{theirs:{version:t,text:n}}),zt(e),H(`${e.file} was changed outside this page. Which version do you want to keep?`),fe("conflict",{file:e})}function pu(e){if(!e.theirs)return;let t=te(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return b(e,{failed:n})}fe("giving_way",{file:e}),b(e,{set_aside:e.now,now:t}),mi(e,t,e.theirs.version),fe("gave_way",{file:e})}function du(e){e.theirs&&(b(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),zt(e),fe("unwritten",{file:e}))}function mu(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;ve(e,t),b(e,{set_aside:o?void 0:n})}var fu=e=>(e.theirs??e).version;function hu(e,t){b(e,{id:t,file:t}),fe("renamed",{file:e,renamed:n=>n})}async function gu(e){let{version:t,text:n}=await ce(e.file),o=te(n);if(!o||e.theirs||t===e.version)return;let i=Ir(e.now,o);if(U(e))return b(e,{version:t,now:i(e.now),saved:o});b(e,{version:t,now:o,saved:o}),fe("renamed",{file:e,renamed:i})}var _u=e=>e.shipped||!e.file?[]:[[e.file,fu(e)]];async function Jr(e,t,n,o){let i=e.file,r=()=>fu(e)===t&&e.file===i;if(!r()||(await qr(e),!r()))return!1;o(),await Kr();let l=await th(i,n);return await qr(e),r()&&(lu(e,l),U(e)&&!e.theirs&&fe("unwritten",{file:e})),!0}async function th(e,t){let n=await t(e);return n===null?{version:n,text:null}:ce(e)}var Kr=()=>new Promise(e=>setTimeout(e,Gf));var nh=300,oh=1200,fi="",$u=0;function po(){let e={run:{file:a.run,now:a.run.now}};for(let t of le){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}return e}function Jt(e=""){let t=performance.now();e&&e===fi&&t-$u<=oh&&a.past.length||Gr(po()),f({future:[]}),fi=e,$u=t}var Gr=e=>f({past:[...a.past,e].slice(-nh)});function hi(e){Gr(bu(po(),e,()=>e.saved??{}))}function bu(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function Yr(e,t){let n=o=>o.map(i=>bu(i,e,t));f({past:n(a.past),future:n(a.future)})}function gi(){let e=a.past.at(-1);e&&(f({past:a.past.slice(0,-1),future:[...a.future,po()]}),yu(e,"Undone"))}function wu(){let e=a.future.at(-1);e&&(f({past:[...a.past,po()],future:a.future.slice(0,-1)}),yu(e,"Redone"))}function yu(e,t){fi="",f({typed:void 0});for(let n of[...le,"run"])ih(n,e);H(t)}function ih(e,t){let n=t[e],o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&st(e,n.file),n.file.now!==n.now&&ve(n.file,n.now))}var _i=e=>e===a.run||le.some(t=>a.formulas[t]===e);ze("giving_way",({file:e})=>{_i(e)&&(fi="",Gr(po()),f({typed:void 0}))});for(let e of["copied","renamed"])ze(e,({file:t,renamed:n})=>Yr(t,n));var hn=e=>Ql(a.run.file,e);function bt(e,t){let n=hn(e);return t?.some(o=>o.file===n)?n:e}async function wt(){for(let e of["pour","pipe"]){let t=$(a.run.now,`/${e}/formula`);typeof t=="string"&&t?await rh(e,bt(t,a.files?.formulas)):st(e,void 0)}}async function rh(e,t){if(a.formulas[e]?.file===t)return;let n=le.map(o=>a.formulas[o]).find(o=>o?.file===t);if(st(e,n),!n)try{let o=await Qr(t);st(e,o),U(o)&&fe("unwritten",{file:o}),o.theirs&&fe("conflict",{file:o})}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o}}async function Qr(e){let t=await Ke(fn,e);return U(t)&&hi(t),t}var mo=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function gn(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:c,material:p}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(c),i(c)),colour:n.materials[p].pbrMetallicRoughness.baseColorFactor}))}function ku(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:c,indices:p}=e;for(let d=0;d<p.length;d+=3){let h=[];for(let g=0;g<3;++g){let w=3*p[d+g],v=3*p[d+(g+1)%3],A=c[w+i]-t,q=c[v+i]-t;if(A>0==q>0)continue;let ln=A/(A-q),to=[1e3*(c[w]+ln*(c[v]-c[w])),1e3*r*(c[w+o]+ln*(c[v+o]-c[w+o]))];A>0?h.push(to):h.unshift(to)}h.length===2&&l.push([h[0],h[1]])}return l}function xu(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function fo(e){let t=e.positions,[n,o,i,r,l,c]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let d=0;d<t.length;d+=3)i=Math.min(i,t[d]),r=Math.max(r,t[d]),l=Math.min(l,t[d+1]),c=Math.max(c,t[d+1]),n=Math.min(n,t[d+2]),o=Math.max(o,t[d+2]);let p=n+(o-n)*.50137;return{loops:xu(ku(e,p)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*c,cut_y:-1e3*p}}function Tu(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>xu(ku(e,n+r*o,"level"))).reduce((r,l)=>vu(l)>1.001*vu(r)?l:r)}function vu(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function Zr(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],c)=>{let[p,d]=i[(c+1)%i.length];if(!(Math.min(l,d)>t||Math.max(l,d)<t))for(let h of l===d?[r,p]:[r+(t-l)/(d-l)*(p-r)])n=Math.min(n,h),o=Math.max(o,h)});return n<=o?[n,o]:[e.left,e.right]}var Ru=40,sh=2e3,Xr=0;async function Su(e){let t=await ft({kind:"glb",gauge:e}),n=gn(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function _n(e){let[t,n]=await Promise.all([Ve(e),Su(e)]),o=fo(n);return{gauge:t,outline:o,above:Tu(n,o)}}async function ah(e){let{pockets:t}=await Ve(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:Ru},(i,r)=>`${(n*(r+1)/Ru).toFixed(4)} mm`);return Ve({...e,depth:o})}function Ee(){lh()}async function lh(){let e=$(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++Xr,n=bt(e,a.files?.moulds);try{let[o,i]=await Promise.all([ah({file:n}),Su({file:n})]);t===Xr&&f({measured:{mould:n,gauge:o,outline:fo(i)},measuring_failed:void 0})}catch(o){if(t!==Xr)return;if(!(o instanceof y))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Ee,sh)}}var uh=30,ch=1200,Au=0,es=!1,ts=!1;function os(e,t,n){let o=t==="mesh"?a.mesh:void 0;f({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),rs()}var yt=()=>f({mould:void 0,mesh:void 0}),$n=(e,t,n)=>os(co(De,e),t,n);async function Du(e,t){let n=await Ke(De,e,t?crypto.randomUUID():e),o=String(n.now.name??e);t&&b(n,{now:{...n.now,name:""}}),os(n,"form",t?`A copy of ${o}`:`Change ${o}`)}async function Mu({id:e,file:t,text:n}){let o=t?await Ke(De,t,e):co(De,JSON.parse(n),e);os(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var O=()=>a.mould,P=()=>O().open.now;function ne(e,t){ph(e),ve(O().open,B(P(),e,t))}var ns="",Pu=0;function ph(e){let t=performance.now(),{past:n}=O();(e!==ns||t-Pu>ch||!n.length)&&b(O(),{past:[...n,P()]}),b(O(),{future:[]}),[ns,Pu]=[e,t]}function Ou(){let{past:e,future:t,open:n}=O(),o=e.at(-1);o&&(b(O(),{past:e.slice(0,-1),future:[...t,n.now]}),Cu(o,"Undone"))}function Fu(){let{past:e,future:t,open:n}=O(),o=t.at(-1);o&&(b(O(),{past:[...e,n.now],future:t.slice(0,-1)}),Cu(o,"Redone"))}function Cu(e,t){ns="",f({typed:void 0}),ve(O().open,e),H(t)}var dh=["name","note","owned","unmould_after"];function is(e){let t=P(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!dh.includes(l)))&&b(O(),{is_old:!0});let i=n.some(l=>O().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(O().is_old||i||r)&&rs()}function rs(){clearTimeout(Au),Au=window.setTimeout(()=>{mh()},uh)}async function mh(){if(es)return void(ts=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!Ce(t,"shape")&&!Ce(t,"mesh"))){if(uo(t).length)return b(e,{complaint:void 0});es=!0;try{let n=De.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await _n(o);e.open.now===t&&b(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof y))throw n;e.open.now===t&&ss(n)}finally{es=!1,ts&&rs(),ts=!1}}}function ss(e){let{field:t,problem:n,remedy:o,keep:i,entry:r}=e.complaint,l=t?`${n}; ${o}`:e.message;b(O(),{complaint:{field:li(P(),t),line:l,keep:i&&{...i,at:li(P(),i.at)},about:r===void 0?void 0:li(P(),`${t}/${r}`)}})}var as=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],Eu=e=>e.filter(t=>t.theirs),at=e=>Eu(as(e==="apart"?["apart"]:["pour","pipe"]))[0],$i=()=>[a.run,...as(le)].filter(e=>e.is_taken&&!e.theirs),bi=()=>Eu([a.run,...as(le)]);var ho=()=>a.formulas.apart?"apart":"run",Lu=e=>f({dangers:{...a.dangers,[ho()]:e}});function Bu(e){let t=e.cautions.filter(n=>n.severity==="danger");Lu(t.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function Wu(e){e.lye_heavy&&Lu([{text:J(e),is_of_heat:!1}])}var fh=400,hh=2e3,wi=0;function go(){clearTimeout(wi),wi=window.setTimeout(()=>{Le()},fh)}async function Le(){clearTimeout(wi);let{run:e}=a;try{await qt(e),U(e)&&!e.theirs&&e===a.run&&go()}catch(t){if(!(t instanceof y))throw t;t.may_pass&&(wi=window.setTimeout(()=>{Le()},hh))}}var Iu=Promise.resolve();function bn(){let e=Iu.then(gh);return Iu=e.catch(()=>{}),e}async function gh(){for(let e of le){let t=a.formulas[e];!t||!U(t)||t.theirs||(t.shipped&&e!=="apart"&&await ou(a.run),await qt(t))}}function Hu(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=bt(String(n?.mould??""),a.files?.moulds);return{file:dn("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},..._h(t)}}}function _h(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}var Be=new Map,_o=new Set,$h={changed:{},unreadable:[]},wn=()=>new Set(le.flatMap(e=>a.formulas[e]??[]));async function ju(){let e=bh(),t=new Set([...wn()].map(({file:o})=>o));for(let o of Be.keys())!e.has(o)&&!t.has(o)&&Be.delete(o);for(let o of _o)e.has(o)||_o.delete(o);let n=[...e].filter(o=>!Be.has(o));for(let[o,i]of await Nu(n))Be.has(o)||Be.set(o,i)}async function Nu(e){let t=e.filter(o=>!_o.has(o)),n=t.length?await pn(new Map(t.map(o=>[o,null]))):$h;return cs(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var ls=async e=>(await Nu([e])).get(e)??null,us=()=>new Map([...Be].filter(([e])=>!_o.has(e)));function bh(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(hn(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add(hn("studio.json")),t($(n,"/pour/mould")),t($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t($(n,`/${o}/formula`));for(let{file:o,now:i}of wn()){let r=i.own_fats;typeof r=="string"&&r&&e.add(jt(o)+r).add(r)}return e}function Uu(e,{changed:t}){let n=Object.keys(t).filter(o=>Be.has(o)&&Be.get(o)===e.get(o));for(let o of n)Be.set(o,t[o]);return n}var cs=e=>e.forEach(t=>_o.add(t));function zu(){return[...wn()].flatMap(({file:e,version:t})=>{let n=Be.get(e)??t;return Be.delete(e),n===t?[]:[e]})}var Vu=0,ps=()=>Vu;function ds(e){++Vu,f({is_old:!0,changed_beside:e})}var wh=1e3,yh=450,yi=!1,Kt=!1,ms=0;function ee(){f({is_old:!0}),yi?Kt=!0:yn()}async function yn(){if(yi){Kt=!0;return}yi=!0,qu(!1);try{do Kt=!1,await vh();while(Kt)}finally{yi=!1,qu(!0),L()}}var qu=e=>{document.documentElement.dataset.settled=String(e)};function Ju(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function vh(){let e=Ju();try{await bn(),await ju(),e=Ju();let{apart:t}=a.formulas;if(at(t?"apart":"run"))return f({is_old:!0});let n=ps(),o=t?Hu(t.file):{file:a.run.file,run:a.run.now},i=await ri(o);if(window.clearTimeout(ms),!e())return void(Kt=!0);f({plan:i,planned:o,complaint:void 0}),Bu(i);let r=n===ps();f({is_old:Kt||!r}),r&&f({changed_beside:void 0})}catch(t){if(!(t instanceof y))throw t;if(!e())return void(Kt=!0);kh(t)}}function kh(e){f({is_old:!0}),window.clearTimeout(ms);let t=()=>{f({complaint:e.complaint}),Wu(e.complaint)};a.complaint||!a.plan?t():ms=window.setTimeout(t,yh),e.may_pass&&window.setTimeout(ee,wh)}var vi=e=>Object.values(a.formulas).includes(e),Ku=e=>`${String($(e,"/pour/formula"))}
${String($(e,"/pipe/formula"))}`;function xh(e,t){$(e,"/pour/mould")!==$(t,"/pour/mould")&&Ee(),Ku(e)!==Ku(t)&&wt(),ee(),go()}var Th=ee;function Rh(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String($(r,o)??"").endsWith(Nt(t))?B(r,o,e.file):r;Yr(a.run,i),i(a.run.now)!==a.run.now&&ve(a.run,i(a.run.now))}}function Gu(){ze("edited",({file:e,before:t})=>{e===a.run?xh(t,e.now):vi(e)?Th():e===a.mould?.open&&is(t)}),ze("gave_way",({file:e})=>{if(e===a.mould?.open)return is();e===a.run&&(Ee(),wt().then(ee)),ee()}),ze("unwritten",({file:e})=>{e===a.run?Le():vi(e)&&ee()}),ze("conflict",({file:e})=>{vi(e)&&f({is_old:!0})}),ze("renamed",({file:e})=>{e===a.run&&(localStorage.setItem("run",e.file),Ee(),wt()),ee()}),ze("copied",({file:e,from:t})=>{vi(e)&&Rh(e,t),e===a.run&&(localStorage.setItem("run",e.file),ee())})}var $o=["runs","formulas","moulds"],bo=["weigh","set-up","watch","money","mould","print"],Me=e=>$o.some(t=>t===e),Ge=e=>bo.some(t=>t===e);var Yu=e=>rt("GET",`/api/bench?run=${encodeURIComponent(e)}`),Qu=e=>he("/api/bench/tick",e),Zu=e=>he("/api/bench/weigh_cup",e),Xu=(e,t)=>he("/api/bench/anew",{run:e,batch:t}),ec=(e,t)=>he("/api/bench/finish",{run:e,batch:t});var Sh=1e4,fs=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",fs);var ki=[],vn=()=>`bench ${a.files?.folder??""}`;function We(){try{return[...JSON.parse(localStorage.getItem(vn())??"[]"),...ki]}catch{return ki}}function tc(e){try{e.length?localStorage.setItem(vn(),JSON.stringify(e)):localStorage.removeItem(vn()),ki=[]}catch{ki=e}}var Ah=(e,t)=>e.run===t.run&&e.batch===t.batch&&e.key===t.key;function nc(e){let t={...e,id:crypto.randomUUID(),tab:fs,at:Date.now()};tc([...We().filter(n=>!Ah(n,t)),t])}var xi=e=>tc(We().filter(t=>!e(t))),hs=()=>We().find(e=>e.tab===fs||Date.now()-e.at>Sh);var oc=2e3,Oe=e=>f({bench:{...a.bench,...e}}),Ph=()=>Oe({acts:We()});addEventListener("storage",({key:e})=>{e===vn()&&Ph()});function ic(){let{file:e}=a.run;!e||a.bench.run===e||(f({bench:{run:e,batches:[],complaints:[],acts:We()}}),kn().then(bs))}function Ti(){let{run:e,version:t}=a.bench;return t===void 0||e!==a.run.file?void 0:{run:e,version:t}}var wo=0;async function kn(){let{run:e}=a.bench,t=wo;try{let n=await Yu(e);if(e!==a.bench.run)return;if(t!==wo)return await kn();rc(n)}catch(n){if(!(n instanceof y))throw n;if(e!==a.bench.run)return;Oe({failed:J(n.complaint)}),sc(n)&&setTimeout(()=>a.bench.failed!==void 0&&void kn(),oc)}}var rc=({batches:e,version:t,complaints:n=[]})=>Oe({batches:e,version:t,complaints:n.map(({line:o})=>o),failed:void 0}),sc=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t),xn=e=>a.bench.batches.find(t=>t.batch===e),_s=e=>a.bench.acts.filter(({run:t,batch:n})=>t===a.bench.run&&n===e),Tn=e=>_s(e).length>0;function Gt(e,t){let n=_s(e).find(i=>i.key===t),o=xn(e)?.ticks[t]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function $s(e){let t=_s(e).find(n=>n.reading!==void 0);return(t?t.reading:xn(e)?.weigh_cup)??""}function ac(e,t,n){let{run:o}=a.bench,r=xn(e)!==void 0||!a.planned?void 0:X(a.planned.run);nc({run:o,batch:e,seen:t,text:r,...n}),Oe({acts:We(),chosen:e,told:void 0}),bs()}var lc=(e,t,n,o)=>ac(e,t,{key:n,done:o}),uc=(e,t,n)=>ac(e,t,{reading:n||null}),gs=!1;async function bs(){if(!gs){gs=!0;try{await navigator.locks.request(vn(),Dh)}finally{gs=!1}We().length&&setTimeout(()=>{bs()},oc)}}async function Dh(){for(let e=hs();e;e=hs())if(!await Mh(e))return}async function Mh(e){let{id:t}=e;try{let n=await Oh(e);return++wo,xi(o=>o.id===t),Fh(n,e.run),!0}catch(n){if(!(n instanceof y))throw n;return sc(n)?(Oe({unsent:J(n.complaint)}),!1):(await Ch(e,n),!0)}}function Oh({run:e,text:t,batch:n,seen:o,key:i,done:r,reading:l}){let c={run:e,text:t,batch:n,seen:o};return i!==void 0?Qu({...c,key:i,done:r??!1}):Zu({...c,reading:l??null})}function Fh(e,t){let n=We();if(t!==a.bench.run)return Oe({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(r=>r.batch!==e.batch),e].sort((r,l)=>r.batch-l.batch);Oe({acts:n,batches:i,unsent:void 0})}async function Ch(e,{complaint:t}){++wo,xi(o=>o.run===e.run&&o.batch===e.batch);let n=`Not taken: ${J(t)}.`;Oe({acts:We(),unsent:void 0,told:{batch:e.batch,words:n}}),H(n),ee(),await kn()}async function yo(e){let{run:t}=a.bench;await cc(e,async()=>{let n=await Xu(t,e);return xi(o=>o.run===t&&o.batch===e),n})}var ws=e=>cc(e,()=>ec(a.bench.run,e));async function cc(e,t){let{run:n}=a.bench;try{let o=await t();if(++wo,n!==a.bench.run)return;rc(o),Oe({acts:We(),told:void 0,chosen:e})}catch(o){if(!(o instanceof y))throw o;Oe({told:{batch:e,words:J(o.complaint)}})}}var pc=e=>Oe({chosen:e,told:void 0}),dc=()=>Oe({told:void 0});var vo=()=>f({own_fats:{}});function Rn(e){let t=ys(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function ys(e){let t=a.formulas[e],n=$(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=`${t.file}
${n}`,i=a.own_fats[o];return i||(mc(o,"waiting"),Eh(n,t.file).then(r=>mc(o,r)),"waiting")}var mc=(e,t)=>f({own_fats:{...a.own_fats,[e]:t}});async function Eh(e,t){for(let n of new Set([jt(t)+e,e])){let o=await Lh(n);if(Array.isArray(o?.fats))return o.fats.map(Bh)}return"none"}async function Lh(e){try{return te((await ce(e)).text)}catch{return}}var Bh=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:Wh(n)});function Wh(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var Sn=[],ko;function Ri(){Sn.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||Sn.push(e);ko===void 0&&hc()}function fc(e){let t=a.own_moulds[e];return!t&&e!==ko&&!Sn.includes(e)&&Sn.push(e),ko===void 0&&Sn.length&&hc(),t}async function hc(){for(;(ko=Sn.shift())!==void 0;){let e=ko,t=await Ih(e);f({own_moulds:{...a.own_moulds,[e]:t}})}}async function Ih(e){try{let{pockets:t}=await Ve({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof y))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var _c=()=>f({own_tips:{}}),vs=!1;function $c(){return!a.tips&&!vs&&(vs=!0,Jl().then(e=>f({tips:e}),wc).finally(()=>vs=!1)),a.tips??[]}function bc(e){let t=hn(e),n=a.own_tips[t];return n||!e||a.typed?n??[]:(gc(t,[]),ce(t).then(({text:o})=>gc(t,Hh(o)),wc),[])}var gc=(e,t)=>f({own_tips:{...a.own_tips,[e]:t}});function Hh(e){let t=te(e)?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function wc(e){if(!(e instanceof y))throw e}var Si=300,jh=5e3,Tc=2e3,Nh=500,yc=!1,xo=new AbortController,Rc=()=>xo.abort(),Sc=()=>document.visibilityState==="hidden";function Ac(){if(yc)return;yc=!0;let e=async()=>{xo=new AbortController;let t=await Uh(xo).then(()=>Sc()?jh:Si,()=>xo.signal.aborted?Si:Tc);await vc(Si),await vc(t-Si,xo.signal),e()};e()}var vc=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),Pc=()=>[a.run,...a.mould?[a.mould.open]:[],...wn()],Dc=()=>new Map(Pc().flatMap(_u)),kc=()=>JSON.stringify([[...Dc().keys()],[...us().keys()],Ti()?.run??null]);async function Uh(e){let[t]=zu();t!==void 0&&await xc(t);let[n,o]=[Dc(),us()],i=new Map([...o,...n]),r=[...o].every(([p,d])=>i.get(p)===d),l=r&&!Sc()?await zh(i,e):await pn(i,Ti());l.bench!==void 0&&await kn(),cs(l.unreadable),await Vh(n,l);let[c]=Uu(o,r?l:await pn(o));c!==void 0&&await xc(c)}async function zh(e,t){let[n,o]=[kc(),Date.now()],i=window.setInterval(()=>{(kc()!==n||Date.now()-o>Er+Tc)&&t.abort()},Nh);try{return await Nl(e,Ti(),t.signal)}finally{window.clearInterval(i)}}async function Vh(e,{changed:t}){let n=wn();for(let o of Pc()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await qh(o,i):await Jr(o,i,ls,()=>{}))}}async function qh(e,t){await Jr(e,t,ls,()=>ds(e.file))&&(vo(),ee())}async function xc(e){ds(e),await Kr(),vo(),_c(),f({measured:void 0}),Ee(),Ri(),await wt(),ee()}var Yt=s`<span aria-hidden="true">⚠</span> Danger`;function To(e,t="",n){let o=Qt(e,n);return o.length?s`<div class="dangers" id=${t||u}>
    ${o.map(i=>s`<p class="danger"><strong>${Yt}</strong> ${i}</p>`)}
  </div>`:u}function Qt(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function Mc(){let e=Me(a.view)||ho()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var Oc=()=>Mc().length>0;function Fc(){let e=Mc(),t=Gh();return!e.length&&!t?u:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>s`<p class="danger"><strong>${Yt}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${Jh()?s`<button type="button" @click=${Kh}>To the question</button>`:u}
          </div>`:u}
  </section>`}var Jh=()=>at(ho())!==void 0&&!Me(a.view);function Kh(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function Gh(){if(!a.run.file||a.view==="reading")return"";let e=at(ho());return e?`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:a.is_old&&a.changed_beside?`${a.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var ks=e=>e==="run"?a.run:a.formulas[e],xs=e=>ks(e)?.now,_=(e,t)=>$(xs(e),t),z=(e,t)=>String(_(e,t)??"");function vt(e,t){let n=_(e,t);return Array.isArray(n)?n:[]}function K(e,t,n){let o=_(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function re(e,t,n){let o=ks(e);!o||$(o.now,t)===n||(Jt(`${e} ${t}`),ve(o,B(o.now,t,n)))}function Cc(e,t){let n=ks(e);n&&(Jt(),f({typed:void 0}),ve(n,t(n.now)))}var Ec="examples/spring_cups.run.json";async function Lc(e){let t=await mt();f({files:t});let n=t.runs.some(o=>o.file===e.run);try{await kt(n?e.run:Yh(t),n||!e.run?e.view:void 0)}catch(o){let i=o instanceof y?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Bc(){let[e,t]=await Promise.all([Vl(),ql()]);f({fats:e,catalogue:t})}function Yh(e){let t=localStorage.getItem("run"),n=i=>e.runs.some(r=>r.file===i);return e.open?e.open:t&&n(t)?t:e.runs.find(i=>!i.shipped)?.file??(n(Ec)?Ec:e.runs[0]?.file??"")}async function kt(e,t="weigh"){if(!e)return f({view:"runs"});a.run.file&&U(a.run)&&await Le();let n=await Ke(Ut,e);ui(n),f({view:t}),localStorage.setItem("run",n.file),U(n)&&(hi(n),go());let o=yn();Ee(),await Promise.all([o,wt()]),Ac()}var Qh=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function Ts(e){let t=a.run.now,n=t.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.cavities,pour:{mould:e.mould,formula:e.formula,line:{below_brim:e.deep_mm>15?"5 mm":"0 mm"}}};Qh()||(o.note=`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,o.spoilage=t.spoilage??"0 %",o.losses={pour:n.pour??{}},o.scales=t.scales??{},t.money&&!a.run.shipped&&(o.money=t.money));let{file:i}=await $t({kind:Ut,name:ht(e.name,".run.json"),text:X(o)});await kt(i,"set-up")}var Zh="examples/plain_bars.run.json";function Ye(e){vo();let t=Ge(a.view)?a.view:a.came_from;f({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function Ro(e){let t=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===e);if(t)return Ye(t);a.run.file||await kt(Zh,"reading"),await Xh(e)}async function Xh(e){let t={past:a.past,future:a.future};f({run_steps:t,past:[],future:[]});try{st("apart",await Qr(e))}catch(n){throw f({...t,run_steps:void 0}),n}f({plan:void 0,complaint:void 0}),Ye("apart"),yn()}async function eg(){let e=a.formulas.apart!==void 0;return await Rs()?(f({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function Rs(){return a.formulas.apart?await tg()?(yn(),!0):!1:!0}async function tg(){try{await bn()}catch(t){if(!(t instanceof y))throw t;return f({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return H("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;st("apart",void 0);let e={...a.dangers,apart:[]};return f({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Ss(e){let{file:t}=a.formulas.apart;await eg()&&re("run",`/${e}/formula`,t)}var ng=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Wc=e=>Hc(ng(e));async function Ic(e,t){let{$schema:n,...o}=JSON.parse((await ce(e)).text);await Hc({...o,name:t},e)}async function Hc(e,t){let n=ht(String(e.name),".formula.json"),{file:o}=await $t({kind:fn,name:n,text:X(e),from:t});await Ro(o)}function As(e){return Math.min(a.batch,e.batches.length-1)}function Ai(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,l=As(e),c=n[l],{pour:p,pipe:d,dust:h,lye_pot:g,bottles:w}=c;return{...r,pour:p,pipe:d,dust:h,lye_pot:g,bottles:w,batch:c,place:`batches.${l}`,whippings:d?.whippings??[],whole:e}}var G=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,og=e=>e.cut?["loaf","loaves"]:["cast","casts"];function ke(e,{pieces:t,casts:n}){let o=e.cut?G(t,"bar"):G(t,"piece");return n===t?o:`${o} from ${G(n,...og(e))}`}var So=e=>e===1?"once":`${e} times`,An=e=>e.batches.length>1,se=e=>e.pieces.batches>1;function Pn(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function jc(e,{count:t,numbers:n}){return se(e)?An(e)?`made ${So(t)}: ${t===1?"batch":"batches"} ${Pn(n.map(String))} of ${e.pieces.batches}`:`made ${So(t)}`:""}function xe(e){return se(e.whole)?`one batch, ${ke(e.whole,e.batch)}`:""}var Nc=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function Ps(e,t){return Nc(e)?`${ke(e.whole,t)}${t.count>1?`, whipped ${So(t.count)}`:""}`:""}function Ao(e,t){let n=Ps(e,t);return n&&`one whipping: ${n}`}var Uc=e=>se(e.whole)||Nc(e),Pi=(e,t)=>`${G(e,"filling")} of ${G(t,"cavity","cavities")}`;var zc=F`<path class="wall" d="M30 10l8 52h44l8-52" />`,Vc={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:F`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${zc}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:F`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:F`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${zc}<path class="measure" d="M20 10h80" />`}};function qc(e,t=""){let{name:n,words:o,drawing:i}=Vc[e],r=`term ${e} ${t}`,l=a.open.has(r);return s`<span class="term"
    ><button
      type="button"
      aria-expanded=${l?"true":"false"}
      aria-label="What ${n} means"
      @click=${()=>Je("open",r)}
    >
      <span aria-hidden="true">?</span></button
    >${l?s`<span class="term-words" role="note"
            >${i?s`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${i}</svg>`:u}<span><b>${n}</b>: ${o}</span></span
          >`:u}</span
  >`}var Mi=28.349523125,Yc=25.4,ig=29.5735295625;function Qe(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function k(e,t){return rg(Qe(e,t))}var rg=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function lt(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${Qe(e,t)} %`:Ds(e)?"just below 0 %":"0.0 %"}var Ds=e=>e<0||Object.is(e,-0),Qc=e=>Math.abs(e-Math.round(e))<1e-6;function Jc(e){return e?[0,1,2,3].find(t=>Qc(e*10**t))??3:0}function Kc(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function sg(e){return[0,1,2].find(t=>e.every(n=>Qc(n*10**t)))??3}function Oi(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function _e(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-sg([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var Zc=.001;function Di(e,t,n,o,i=1e-9){let r=10**n;return Qe(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var Gc=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function ag(e){if(!Gc.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return Gc.find(t=>Math.abs(t*Mi-e)<.6*Zc)}function Y(e,t,n="nearest"){let o=t.scale_step_g||.1,i=ag(o),r=Math.min(.6*Zc,o/2),l=i?Di(t.g,1,Kc(o),n):Di(t.g,1,Jc(o),n,r),c=i?Di(t.g,Mi,Jc(i),n,r):Di(t.g,Mi,Kc(o/Mi),n),[p,d]=[`${t.g_text??l} g`,`${t.oz_text??c} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[d,p]:Oi(e,p,d)}var M=(e,t,n=1,o="nearest")=>Y(e,{g:t,scale_step_g:10**-n},o);function ue(e,t,n=1){return Oi(e,`${Qe(t,n)} ml`,`${Qe(t/ig,2)} US fl oz`)}function ae(e,t){return Oi(e,`${k(t,1)} mm`,lg(t))}function lg(e){let t=Math.round(Math.abs(e)/Yc*16),n=e<0&&t?"-":"",o=t%16,i=16;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/16),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var Ms=([e])=>e,R=([e,t])=>t?`${e} (${t})`:e;function Xc(e,t){return Oi(e,`${Qe(t,0)} \xB0C`,`${Qe(t*1.8+32,0)} \xB0F`)}function Dn(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??Yc;return n*o}function Ze(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var Mn=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function On(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function xt(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}var ep=e=>e.goes_into==="lye",tp=({role:e})=>e==="alkali",ug=e=>tp(e)?"down":"nearest",ut=(e,t)=>Y(e,t,ug(t));function Fn(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>ep(i)),n=({one:i})=>i.role==="water",o=({one:i})=>tp(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function Fi(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!ep(t))}function Cn(e,t=()=>{}){if(!e.theirs)return u;let n=e.theirs.text===null,o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{du(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?s`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:u}
    <div class="choice">
      ${n?u:s`<button type="button" @click=${()=>pu(e)}>Load the saved file</button>`}
      <button type="button" @click=${i}>Overwrite it with this page</button>
    </div>
  </section>`}function En(e){if(e.theirs||!e.set_aside||_i(e)&&!e.is_taken)return u;let t=()=>{_i(e)&&Jt(),mu(e)};return s`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?s`<button type="button" @click=${()=>uu(e)}>Close</button>`:u}
    </div>
  </section>`}var ct={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Ci=e=>(...t)=>({_$litDirective$:e,values:t}),Ln=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:cg}=kl,np=e=>e;var ip=e=>e.strings===void 0,op=()=>document.createComment(""),Bn=(e,t,n)=>{let o=e._$AA.parentNode,i=t===void 0?e._$AB:t._$AA;if(n===void 0){let r=o.insertBefore(op(),i),l=o.insertBefore(op(),i);n=new cg(r,l,e,e.options)}else{let r=n._$AB.nextSibling,l=n._$AM,c=l!==e;if(c){let p;n._$AQ?.(e),n._$AM=e,n._$AP!==void 0&&(p=e._$AU)!==l._$AU&&n._$AP(p)}if(r!==i||c){let p=n._$AA;for(;p!==r;){let d=np(p).nextSibling;np(o).insertBefore(p,i),p=d}}}return n},Tt=(e,t,n=e)=>(e._$AI(t,n),e),pg={},Ei=(e,t=pg)=>e._$AH=t,rp=e=>e._$AH,Li=e=>{e._$AR(),e._$AA.remove()};var C=Ci(class extends Ln{constructor(e){if(super(e),e.type!==ct.PROPERTY&&e.type!==ct.ATTRIBUTE&&e.type!==ct.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!ip(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===ge||t===u)return t;let n=e.element,o=e.name;if(e.type===ct.PROPERTY){if(t===n[o])return ge}else if(e.type===ct.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return ge}else if(e.type===ct.ATTRIBUTE&&n.getAttribute(o)===t+"")return ge;return Ei(e),t}});var oe=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function Os(e,t){return $(xs(e),t)}function Xe(e,t){let n=a.complaint;if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return Zt(e)?J(n):void 0}function pe(e,t){return a.complaint?.field===t?Xe(e,t):void 0}function Zt(e){let t=a.complaint,n=e==="run"?a.run.file:a.formulas[e]?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function dg(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(Os(e,n)??{}).length>1?t:n}function Xt(){let e=a.complaint;if(e)for(let t of["run",...le])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Xe(t,n)&&document.getElementById(oe(t,n));if(o)return o}}function mg(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=fg(e,n);return o&&Mn(t)?`${t.trim()} ${o}`:t}function fg(e,t){return Ze(Os(t,e.at))||e.unit||""}var Te=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:u,Fs=!1;addEventListener("pointerdown",()=>Fs=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>Fs=!1,!0);var sp=()=>f({typed:void 0});function Cs(){Fs?addEventListener("pointerup",()=>setTimeout(sp),{once:!0}):sp()}function m(e){let t=e.of??"run",n=oe(t,e.at),o=Os(t,e.at),i=a.typed?.key===n?a.typed.text:o===void 0?"":String(o),r=Xe(t,e.at),l=d=>{let h=d.target.value;f({typed:{key:n,text:h}});let g=mg(e,h);re(t,g===void 0&&e.takes_part?dg(t,e.at):e.at,g)},p=(a.typed?.key===n&&typeof o=="string"&&o!==i?`taken as ${o}`:"")||e.hint;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${r?"wants":""}"
  >
    <label for=${n}>${e.label}</label>
    <input
      id=${n}
      .value=${C(i)}
      @input=${l}
      @blur=${Cs}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${r?"true":"false"}
      aria-describedby=${[r||p?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${Te(n,r,p)}
  </div>`}function Bi(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var Z=e=>()=>document.getElementById(e),et=(e,t)=>Z(oe(e,t)),en=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),hg=()=>document.activeElement;function $e(e){requestAnimationFrame(()=>Bi(e()))}function Wn(e,t,n,o=hg){H(t),Cc(e,n),$e(o)}function ie(e,t,n,o,i){Wn(e,t,r=>B(r,n,o),i)}var Rt=(e,t,n)=>`${oe(e,t)}-${n}`;function W(e,t){let n=pe(e,t);return n?s`<p id=${oe(e,t)} class="complaint" tabindex="-1">${n}</p>`:u}var ap=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function Q(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${ap(t,n,o)}</div>`}function x({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:c,then:p,hint:d}){let h=i?Rt(e,n,t.replaceAll(/\W+/g,"-")):oe(e,o),g=i?void 0:pe(e,o),w=v=>{if(v===r)return;let A=l.find(([q])=>q===v)[1];ie(e,`${t}: ${A}`,n,c(v),p&&et(e,p(v)))};return s`<div class="field asked ${g?"wants":""}">
    <p class="question" id="${h}-label">${t}</p>
    <div
      class="choice"
      role="group"
      id=${h}
      tabindex="-1"
      aria-labelledby="${h}-label"
      aria-describedby=${g||d?`${h}-said`:u}
    >
      ${ap(r,l,w)}
    </div>
    ${Te(h,g,d)}
  </div>`}function Es(e,t,n,o){let i=oe("run",e),r=pe("run",e),l=()=>ie("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:u}
        @click=${l}
      >
        ${t}
      </button>
    </div>
    ${Te(i,r)}`}function Ie({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:c}){let p=oe(t,n),d=Xe(t,n),h=l??z(t,n),g=!h||o.some(([A])=>A===h),w=[["",i],...g?[]:[[h,h]],...o];return s`<div class="field choose ${d?"wants":""}">
    <label for=${p}>${e}</label>
    <select
      id=${p}
      @change=${A=>{let q=A.target.value;c?c(q):re(t,n,q||!r?q:void 0)}}
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d?`${p}-said`:u}
    >
      ${w.filter(([A])=>A||r||!h).map(([A,q])=>s`<option value=${A} .selected=${C(A===h)}>${q}</option>`)}</select
    >${Te(p,d)}
  </div>`}function In(e,t,n=[]){let o=bt(z("run",t),n);return Ie({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Re({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let c=Rt(e,t,"part"),p=Rt(e,t,"add");return _(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${p} @click=${()=>ie(e,`${o} added`,t,r,en(c))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${c} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>ie(e,`${o} removed`,t,void 0,Z(p))}
      >
        Remove
      </button>
    </div>
    ${W(e,t)} ${l()}
  </div>`}var lp=(e,t)=>`folded ${e} ${t}`,up=(e,t)=>zr(lp(e,t));function D({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=lp(e,t);(i||n.some(d=>Xe(e,d)))&&zr(l);let c=a.open.has(l);return s`<details .open=${c}>
    <summary @click=${d=>{d.preventDefault(),Je("open",l)}}>${o}</summary>
    ${c?s`<div class="folded">${r()}</div>`:u}
  </details>`}var S=({of:e="run",at:t})=>vt(e,t),E=({of:e="run",at:t},n)=>Rt(e,`${t}/${n}`,"item"),Wi=({of:e="run",at:t},n,o)=>Rt(e,`${t}/${n}`,o),gg=({of:e="run",at:t})=>oe(e,t);function Po(e,t,n,o){let{of:i="run",at:r,stays:l,and:c=p=>p}=e;Wn(i,t,p=>c(B(p,r,n.length||l?n:void 0),n.length),o)}function j(e,t,n){let o=S(e);Po(e,`${n} added`,[...o,t],en(E(e,o.length)))}function _g(e,t,n){let o=S(e).filter((l,c)=>c!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);Po(e,`${n} removed`,o,r?Z(Wi(e,i,"drop")):et(e.of??"run",e.at))}function $g(e,t,n,o){let i=[...S(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",p=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;Po(e,`${o} moved ${l}`,i,Z(Wi(e,t+n,p)))}function V(e,t,n){let o=S(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return u;let l=(c,p,d)=>s`<button
      type="button"
      id=${Wi(e,t,p)}
      ?disabled=${d}
      aria-label="${n} ${p}"
      @click=${()=>$g(e,t,c,n)}
    >
      ${c<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:u}
    ${i?s`<button
            type="button"
            id=${Wi(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>_g(e,t,n)}
          >
            ×
          </button>`:u}
  </div>`}function N(e,t,n){let o=gg(e),i=pe(e.of??"run",e.at);return s`${Te(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${t}
    </button>`}function cp(e){let t=z(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${m({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F."})}
      ${m({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days."})}
    </div>
    ${vg(e)}
    ${D({of:e,name:"density",pointers:["/measured_density"],summary:`Density measured${t&&`: ${t}`}`,body:()=>m({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var bg=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],pp={after:"",mass:""},dp=3,wg={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:dp},()=>pp)}}};function yg(e){return _(e,"/drying/weighings")!==void 0?"weighed":_(e,"/drying")!==void 0?"law":_(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function vg(e){let t=yg(e);return s`${x({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:bg,puts:o=>({...K(e,"",["drying","water_lost_in_cure"]),...wg[o]})})}
  ${t==="share"?s`<div class="row">
          ${m({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${t==="law"?s`<div class="row">
          ${m({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${m({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${t==="weighed"?kg(e):u}`}function kg(e){let t={of:e,at:"/drying/weighings",least:dp};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${S(t).map((n,o)=>s`<div class="row named" id=${E(t,o)}>
          ${m({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${m({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${V(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${N(t,"One more weighing",()=>j(t,pp,"weighing"))}`}var xg=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Ii=e=>Rn(e).map(t=>[t.id,t.name]),mp=["unsaid","Not given"],fp=["none","Holds none"],hp=e=>e===void 0?"unsaid":e==="none"?"none":"some",Tg=e=>t=>t==="some"?e:t==="none"?"none":void 0;function gp(e,t){return Ls(e,`${t}/contains_fat`,[mp,fp,["some","Holds fat"]],Ii(e))}function Ls(e,t,n,o){let i=hp(_(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${x({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:Tg({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${Ie({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${m({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:u}`}var Rg=[mp,fp,["some","Holds acid"],["typed","By what it takes up"]],Sg={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Bs(e,t){let n=`${t}/contains_acid`,o=_(e,`${n}/takes_up`)!==void 0?"typed":hp(_(e,n));return s`${x({of:e,question:"Acid in it",at:n,chosen:o,answers:Rg,puts:i=>Sg[i]})}
  ${o==="some"?s`<div class="row">
          ${Ie({label:"Which acid",of:e,at:`${n}/acid`,answers:xg.map(i=>[i,i]),unsaid:"choose ..."})}
          ${m({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?s`<div class="row">
          ${m({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Ws(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Ws(e,t,n){let o=_(e,t)===!0?"yes":"no";return x({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Ag=["tsp/lb","tbsp/lb","tsp/kg"],Hi=["%","g/kg",...Ag].flatMap(e=>[`${e} of fats`,`${e} of batter`]),$p=[...Hi,"% of finished soap","g/kg of finished soap"];function _p(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function ji(e,t,n,o,i=!1){let r=oe(e,t),[l,c]=_p(z(e,t),o),p=a.typed?.key===r?a.typed.text:l,d=Xe(e,t),h=(w,v)=>{let A=`${w.trim()} ${v}`.trim();re(e,t,i&&!w.trim()?void 0:A),L()},g=w=>{let v=w.target.value,[A,q]=_p(v,o);f({typed:{key:r,text:v}}),h(A,q||c)};return s`<div class="field rate ${d?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${C(p)}
        @input=${g}
        @blur=${Cs}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${d?"true":"false"}
        aria-describedby=${d?`${r}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${w=>h(p,w.target.value)}
      >
        <option value="" .selected=${C(c==="")}>of what?</option>
        ${o.map(w=>s`<option value=${w} .selected=${C(w===c)}>${w}</option>`)}
      </select>
    </div>
    ${Te(r,d)}
  </div>`}function Pg(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var Dg=.01+1e-9;function Ni(e,t){let{sum:n,unread:o}=Pg(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=Dg?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var yp=(e,t)=>Rn(e).find(n=>n.id===t)?.name??t,Do=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),zi=e=>S(Do(e));function vp(e){let t=zi(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>Mg(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?Ni("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${n?xp(e):N(Do(e),"Add a fat",()=>kp(e,t.length))} ${Bg(e)}
  </section>`}function Mg(e,t,n){let o=`/fats/${t}`,i=yp(e,String(n[t].fat??""))||"Which fat?",r=pe(e,`${o}/fat`)??pe(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${E(Do(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${oe(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?Is():kp(e,t)}
      >
        ${i}
      </button>
      ${m({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${V(Do(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:u} ${l?xp(e):u}
    ${D({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${Og(n[t])}`,body:()=>Eg(e,t)})}
  </li>`}function kp(e,t){f({picking:{of:e,row:t,text:""}}),$e(Z("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Is(){let e=a.picking;f({picking:void 0}),e&&$e(et(e.of,e.row<zi(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function bp(e,t){let{row:n}=a.picking,o=zi(e);f({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};Po(Do(e),`${yp(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],et(e,`/fats/${n}/share`))}var Ui=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function wp(e,t){let n=Ui(t).split(/\s+/).filter(Boolean),o=i=>n.every(r=>Ui(i).includes(r));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function xp(e){let{row:t,text:n}=a.picking,o=zi(e).map(p=>p.fat),i=Rn(e).filter(p=>wp(p,n)!==void 0),r=i.filter(p=>!o.includes(p.id)||o[t]===p.id);return s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input id="find-fat" .value=${n} @input=${p=>{a.picking.text=p.target.value,L()}} @keydown=${p=>{p.key==="Escape"&&Is();let d=r.length===1?r[0]:r.find(h=>Ui(h.name)===Ui(n.trim()));p.key==="Enter"&&d&&bp(e,d.id)}} autocomplete="off" spellcheck="false" />
      </div>
      <button type="button" @click=${Is}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?i.length===1?"One fat":`${i.length} fats`:"No fat of that name. One that is not here is described in a file of your own fats."}
    </p>
    <div class="choice">
      ${i.map(p=>{let d=o.includes(p.id)&&o[t]!==p.id,h=wp(p,n);return s`<button
          type="button"
          ?disabled=${d}
          aria-pressed=${o[t]===p.id?"true":u}
          @click=${()=>bp(e,p.id)}
        >
          ${p.name}${h===p.name?"":`, ${h}`}${d?" (is in it)":""}
        </button>`})}
    </div>
  </div>`}function Og(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var Fg=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],Cg={published:void 0,one:"",range:{low:"",typical:"",high:""}};function Eg(e,t){let n=`/fats/${t}/saponification_value`,o=_(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=_(e,`/fats/${t}/confirmed`)!==void 0,l=(c,p)=>m({label:c,of:e,at:p,number:!0,short:!0});return s` ${m({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${x({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:Fg,puts:c=>Cg[c],hint:Lg(e,z(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||r?Ws(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function Lg(e,t){let n=Rn(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function Bg(e){let t=ys(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=z(e,"/own_fats");return D({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>m({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list above."})})}var Tp="danger-of-superfat";function Rp(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${m({label:"Superfat: of all that is fat, left without lye",of:e,at:"/superfat",unit:"%",described_by:Qt(e).length?Tp:void 0})}
    </div>
    ${To(e,Tp)} ${Wg(e)} ${zg(e,t)}
  </section>`}function Wg(e){let t=vt(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${x({of:e,question:"Alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>Ig(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,r)=>Hg(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${Ni("The two",t.map(i=>i.share))}
        </p>`:u}`}function Ig(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function Hg(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=pe(e,i)??pe(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||t.share!=="100 %"?m({label:`${r}: share of the saponifying`,of:e,at:`${i}/share`,unit:"%",hint:"By equivalents, not by weight."}):u}
      ${m({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document."})}
    </div>
    ${D({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${jg(t.purity_range)}`,body:()=>Ng(e,i)})}
  </div>`}var jg=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function Ng(e,t){let n=`${t}/purity_range`,o=_(e,n)!==void 0;return s`${x({of:e,question:"Warranted range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${m({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${m({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var Ug={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function zg(e,t){let n=Object.keys(_(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(Ug);return s`${x({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:qg(t)})}
    <div class="row">${n.map(r=>Vg(e,r))}</div>`}function Vg(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?m({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?m({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):m({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function qg(e){if(!(!e||a.is_old))return`It now makes a strength of ${k(e.lye_strength_percent,1)} %; ${k(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${k(e.water_percent_of_fats,1)} % of the fats.`}function St(e,t,n){let o=Jg(e,t);return D({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${Gg(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${Sp(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>Yg(e,i,r))}
        ${m({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function Jg(e,t){let n=vt(e,`${t}/allergens`).length;return[_(e,`${t}/inci`)===void 0?"":"INCI said",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Hs={name:"",share:""},Kg={unsaid:void 0,one:"",many:[Hs]};function Gg(e,t,n){let o=_(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...Hs,name:o}]:Kg[l];return s`${x({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?m({label:"INCI name",of:e,at:t}):u}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${Sp(e,t,"INCI name","One more INCI name")}`:u}`}function Yg(e,t,n){return x({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:_(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function Sp(e,t,n,o,i){let r={of:e,at:t};return s`${S(r).map((l,c)=>s`<div class="row named" id=${E(r,c)}>
        ${m({label:`${n} ${c+1}`,of:e,at:`${t}/${c}/name`})}
        ${m({label:`Share ${c+1}`,of:e,at:`${t}/${c}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${c}`,c)??u} ${V(r,c,String(l.name||`${n} ${c+1}`))}
      </div>`)}
  ${N(r,o,()=>j(r,Hs,n))}`}var Qg=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:s_},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:e_},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:t_},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:n_}];function Ap(e){return Qg.map(t=>{let n={of:e,at:`/${t.list}`},o=S(n),i=(r,l)=>s`<li class="formula-row" id=${E(n,l)}>
        ${Xg(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${N(n,t.add,()=>j(n,Zg(t),t.add.replace("Add ","")))}
    </section>`})}function Zg(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function Xg(e,t,n,o,i){let r=`/${t.list}/${i}`,l=pe(e,r),c=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${m({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?u:ji(e,`${r}/rate`,"How much",Hi)}
      ${V(n,i,c)}
    </div>`}function js(e,t,n,o){let i=`${t}/goes_into`,r=_(e,i);return x({of:e,question:"Goes into",at:i,chosen:r,answers:n,puts:c=>c,hint:o||r?void 0:"The batter, unless you name another place."})}var Pp=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Ns(e,t,n){let o=(l,c,p)=>l?`${c}${String(l)}${p}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return D({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${m({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${m({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${ji(e,`${t}/limit`,"The most that the supplier's document allows",$p,!0)}`})}function Us(e,t,n,o){let i=(l,c)=>l===void 0?"":l==="none"?`no ${c}`:c,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return D({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${gp(e,t)} ${o?Bs(e,t):u}`})}var Vi=(e,t,n)=>St(e,t,String(n.name||"it"));function e_(e,t,n){return s`${js(e,t,Pp,!0)}
    <div class="folds">${Us(e,t,n,!0)} ${Ns(e,t,n)} ${Vi(e,t,n)}</div>`}function Dp(e,t,n){return D({of:e,name:`${t} place`,pointers:[`${t}/goes_into`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>js(e,t,Pp,!1)})}function t_(e,t,n){return s`<div class="folds">
    ${Ns(e,t,n)} ${Vi(e,t,n)} ${Dp(e,t,n)} ${Us(e,t,n,!1)}
  </div>`}function n_(e,t,n){return s`${i_(e,t)}
    <div class="folds">
      ${Ns(e,t,n)} ${Vi(e,t,n)} ${Dp(e,t,n)} ${Us(e,t,n,!0)}
    </div>`}var o_=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function i_(e,t){let n=`${t}/dispersed_in`,o=_(e,n)!==void 0,i=_(e,`${n}/from`);return s`${x({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${Ie({label:"Which oil",of:e,at:`${n}/fat`,answers:Ii(e),unsaid:"choose ..."})}
            ${m({label:"g of oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,short:!0})}
          </div>
          ${x({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:o_,puts:l=>l,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var r_=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function s_(e,t,n){let o=(i,r,l)=>D({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${l_(e,t,n)}
    ${js(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${c_(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>a_(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Bs(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>m({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Vi(e,t,n)}
    </div>`}function a_(e,t){let n=_(e,t)===!0?"ice":"liquid";return x({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function l_(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...K(e,t,["replaces","rate"]),[r]:""});return s`${x({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:u_,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${m({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?ji(e,`${t}/rate`,"Rate",Hi):u}`}var u_=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function c_(e,t){let n=`${t}/composition`,o=typeof _(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(c,p)=>m({label:c,of:e,at:`${n}/${p}`,unit:"%",short:!0});return s`${x({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:c=>c==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${Ls(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Ii(e)])}
          <div class="row">
            ${m({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${Ie({label:"Built-in figures of",of:e,at:n,answers:r_.map(c=>[c,c]),unsaid:"choose ..."})}
        </div>`}`}var zs=!1;function Mp(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!zs&&d_(),{workings:p_(n?.workings,e),complaint:n?.complaint,is_old:o}}function p_(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function d_(){let{plan:e,planned:t}=a;if(!(!e||!t)){zs=!0;try{let{how:n}=await Ul(t);f({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof y))throw n;f({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{zs=!1}}}function T({key:e,label:t,shown:n,of:o,working:i,size:r="plain",note:l}){let c=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Je("open",e)}
    >
      <span class="name">${t}${l?s`<small>${l}</small>`:u}</span>
      <span class="value ${r} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${c?s`<div class="sum" id=${p}>${i?Op(i):Vs(o)}</div>`:u}
  </div>`}var tn=(e,t,n)=>T({key:e,label:t,shown:["",""],of:n});function Vs(e){let{workings:t,complaint:n,is_old:o}=Mp(e);return t.length?s`<div class=${o?"old":""}>${t.map(Op)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Op({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${e}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.map(({name:c,value:p,from:d})=>s`<tr>
              <th scope="row">${c}</th>
              <td>${p}</td>
              <td>${d??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?s`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:u}`}var jn="/pipe/beads",de=`${jn}/tip`,At={at:`${jn}/moves`,in_order:!0},qs="\0own",Ep={tip:"",bead_to_opening:"",moves:[]},He=(e,t)=>({name:e,label:t,kind:"length"}),Fp={name:"count",label:"How many",kind:"count"},Cp=He("circle_radius","Radius of their circle"),Ks={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[He("diameter","Across"),He("height","High")]},ring:{words:"Ring",does:"One closed turn.",measures:[He("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},He("start_radius","Radius at the start"),He("end_radius","Radius at the end"),He("rise","Climbs by")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[He("length","Long")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Fp,Cp,He("height","High")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Fp,Cp,He("length","Long")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[He("length","Long"),{name:"aside",label:"Beside the middle by",kind:"signed",optional:!0}]}};function Lp(e){return s`${f_()} ${Gs()?g_():u}
    ${m({label:"Bead \xF7 tip opening",at:`${jn}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${S(At).map((t,n)=>w_(t,n,e))}</div>
    ${k_()}`}var Gs=()=>typeof _("run",de)=="object";function m_(){let e=_("run",`${jn}/own_tips`);return e===void 0?$c():bc(String(e))}function f_(){let e=n=>n===qs?ie("run","a tip of your own",de,{name:"",round:{radius:""}},Wp):re("run",de,n),t=m_().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${Ie({label:"Tip",at:de,answers:[...t,[qs,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:Gs()?qs:void 0})}
  ${Gs()?u:D({name:"tips",pointers:[`${jn}/own_tips`],summary:"Tips of a file of your own",body:()=>m({label:"File of tips",at:`${jn}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the tips that ship are offered."})})}`}var Bp=Rt("run",de,"own"),Wp=en(Bp),Js=[["round","Round"],["star","Star"],["outline","Another outline"]],qi={x:"",y:""},h_={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[qi,qi,qi]};function g_(){let e=Js.map(([n])=>n).find(n=>_("run",`${de}/${n}`)!==void 0),t=n=>({...K("run",de,Js.map(([o])=>o)),[n]:h_[n]});return s`<div class="part" id=${Bp} role="group" aria-label="My own tip">
    ${W("run",de)} ${m({label:"What you call the tip",at:`${de}/name`})}
    ${x({question:"Opening of the tip",at:de,is_told_elsewhere:!0,chosen:e,answers:Js,puts:t})}
    ${e?$_(e):u}
    ${D({name:"hand",pointers:[Hn,`${de}/note`],summary:"Correction for your hand",body:__})}
  </div>`}var Hn=`${de}/hand`;function __(){let e=t=>_("run",t)!==void 0;return s`<div class="row">
      ${m({label:"Correction for your hand",at:`${Hn}/correction`,number:!0,short:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${e(`${Hn}/correction`)?m({label:"From so many trials",at:`${Hn}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${e(Hn)?s`<button
            type="button"
            @click=${()=>ie("run","correction removed",Hn,void 0,Wp)}
          >
            Leave the correction out
          </button>`:u}
    ${m({label:"Note on the tip",at:`${de}/note`,optional:!0})}`}function $_(e){if(e==="outline")return b_();let t=(n,o)=>m({label:o,at:`${de}/${e}/${n}`,unit:"mm",short:!0});return s`<div class="row">
    ${e==="round"?t("radius","Radius of the opening"):s`${m({label:"Points",at:`${de}/star/points`,count:!0,short:!0})}
          ${t("outer_radius","Radius to the points")} ${t("inner_radius","Radius to the notches")}`}
  </div>`}function b_(){let e={at:`${de}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${S(e).map((t,n)=>s`<div class="row" id=${E(e,n)}>
          ${m({label:`Corner ${n+1}, x`,at:`${e.at}/${n}/x`,unit:"mm",short:!0})}
          ${m({label:`Corner ${n+1}, y`,at:`${e.at}/${n}/y`,unit:"mm",short:!0})}
          ${V(e,n,`corner ${n+1}`)}
        </div>`)}
    ${N(e,"One more corner",()=>j(e,qi,"corner"))}`}function w_(e,t,n){let o=Ks[String(e.move)],i=`${At.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${E(At,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${V(At,t,r)}
    </div>
    ${W("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>y_(i,l))}
      ${m({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${v_(t,n)}
  </div>`}function y_(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return m({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function v_(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==S(At).length)return u;let i=o.length_mm>0?`${k(o.length_mm/10,1)} cm of bead`:"";return T({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:ue(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function k_(){let e=o=>({move:o,...Object.fromEntries(Ks[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=oe("run",At.at),n=pe("run",At.at);return s`${Te(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:u}
    >
      ${Object.entries(Ks).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>j(At,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var x_={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]};function Mo(e,t){return x_[e].map(({name:n,label:o,unit:i,optional:r})=>m({label:t?`${t}: ${o.toLowerCase()}`:o,at:`/losses/${e}/${n}`,unit:i,short:!0,optional:r}))}var T_=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]);function Oo(e){let t=`/${e}/temperatures`,n=(o,i)=>m({label:i,at:`${t}/${o}`,unit:a.units==="us"?"\xB0F":"\xB0C",optional:!0,short:!0});return D({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">What you leave blank is left out. The lye shelf tells what follows.</p>
        ${W("run",t)}
        <div class="row">
          ${n("room_at","Room and dry alkali")} ${n("water_at","Water")}
          ${m({label:"Of the water, as ice",at:`${t}/ice_share`,unit:"%",optional:!0,short:!0})}
          ${n("lye_used_at","Lye when it is used")} ${n("fats_at","Fats")}
          ${n("batter_below","Batter must stay below")}
          ${Ie({label:"The lye cools in",at:`${t}/cooled_in`,answers:T_,unsaid:"not given",optional:!0})}
        </div>`})}var Ip={holds:"",net:""},je=()=>$(a.run.now,"/pipe")!==void 0;function Hp(){let e=$(a.run.now,"/pour/formula")??"";Wn("run","Topping added",n=>B(B(n,"/pipe",{formula:e,fills_headspace:"",whip:Ip}),"/losses/pipe",{bag:"",bowl_and_whisk:""}),Z("lane-pipe"))}function R_(e){let t=Object.keys($(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:B(o,i,void 0),e)}function S_(){Wn("run","Topping removed",R_,Z("topping-back"))}function jp(){let e=a.past.at(-1)?.run?.now;return!e||$(e,"/pipe")===void 0||je()?u:s`<button type="button" id="topping-back" @click=${gi}>Bring the topping back</button>`}function Ys(){return s`${F_()} ${Oo("pipe")}
    <p class="choice"><button type="button" @click=${S_}>Take the topping away</button></p>`}function Qs(e){return s`<h3>How large is the topping?</h3>
    ${W("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Re({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:Ip},body:A_})}
      ${Re({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:P_})}
    </div>
    ${Re({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:Ep,body:()=>Lp(e)})}
    ${e?M_(e):u}`}function A_(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${S(e).map((t,n)=>s`<div class="row" id=${E(e,n)}>
            ${m({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${V(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${N(e,"One more trial",()=>j(e,"","trial"))}
    <div class="row">
      ${m({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${m({label:"Cup holds",at:"/pipe/trials/weigh_cup/holds",unit:"ml",short:!0})}
    </div>
    ${W("run","/pipe/trials/weigh_cup")}`}function P_(){let e="/pipe/envelope",t=_("run",`${e}/form`);return s`${x({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${m({label:"Across",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${m({label:"High",at:`${e}/height`,unit:"mm",short:!0})}
      ${m({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var D_={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function M_(e){let t=e.visible_by;if(!t)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>T({key:`pipe.by.${i}`,label:D_[i],note:o(l),shown:ue(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${O_(e)}`}function O_(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return u;let n=k(t.correction,2),o="/pipe/beads/tip/hand",i=typeof _("run","/pipe/beads/tip")=="object",r=i&&$(a.run.now,`${o}/correction`)!==t.correction,l=()=>ie("run","correction kept",o,{correction:t.correction,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function Zs(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${m({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g"})}
      ${m({label:"Cup holds",at:"/pipe/whip/holds",unit:"ml",short:!0})}
    </div>
    ${W("run","/pipe/whip")}
    ${m({label:"One bag holds",at:"/pipe/bag_holds",unit:"ml",optional:!0,hint:e?.loads?`${e.loads} bag loads`:void 0})}`}function Np(){return s`<h3>What is lost of it</h3>
    <div class="row">${Mo("pipe")}</div>`}function F_(){let e=(n,o,i,r=!1)=>m({label:n,at:o,unit:i,optional:r,short:!0});return D({name:"vessels",pointers:["/pipe/bowl","/pipe/pace","/pipe/lye_spoon"],summary:"Bowl, pace, lye by the spoon",body:()=>s` <div class="items">
        ${Re({at:"/pipe/bowl",name:"the bowl",title:"The bowl",add:"Say what the bowl holds",blank:{holds:""},body:()=>s`<div class="row">
              ${e("Bowl holds","/pipe/bowl/holds","l")}
              ${e("Smallest unwhipped amount the whisk reaches","/pipe/bowl/whisk_needs","ml",!0)}
            </div>`})}
        ${Re({at:"/pipe/pace",name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
              ${e("Can be piped for","/pipe/pace/open_time","min")}
              ${e("To pipe one","/pipe/pace/time_per_piece","s")}
              ${e("To change the bag","/pipe/pace/time_per_bag_change","s",!0)}
            </div>`})}
        ${Re({at:"/pipe/lye_spoon",name:"the lye spoon",title:"Lye by the spoon",add:"Lye is whipped in by the spoon",blank:{holds:"",time_between:""},body:()=>s`<div class="row">
              ${e("Spoon holds","/pipe/lye_spoon/holds","ml")}
              ${e("From one spoonful to the next","/pipe/lye_spoon/time_between","s")}
            </div>`})}
      </div>`})}function C_(e,{at:t,figure:n}){let o=$(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function Ji(e,t,n){return t?s`<button type="button" @click=${()=>n(t.at,C_(e,t))}>It is really so: keep it</button>`:u}var Up=e=>[...a.files?.runs??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function Ki(e){let t=e?.used_by??[];return t.length?s`<p class="aside">Used by ${Pn(t.map(Up))}.</p>`:u}function Gi(e){let t=e?.used_by??[];return t.length<2?u:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Pn(t.map(Up))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}function E_({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,h])=>h),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,c=l-r-n,p=[e.left-n,c,e.right-e.left+2*n,-e.floor+n-c],d=(h,g)=>F`<path class="shaded pour" fill-rule="evenodd" d=${g} /><path class="wall ${h}" fill-rule="evenodd" d=${g} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${p.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${d("above",mo(t,l))}${d("side",mo(e.loops))}
    </svg>
  </div>`}function Nn(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${E_(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${R(ue(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${R(ue(a.units,i.total_ml))} together`:u},
      ${R(ae(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${R(ue(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:u}`}var L_={mm:"in",g:"oz","\xB0C":"\xB0F"},B_={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Yi(e,t,n=""){let o=Xs(e);if(o)return o.unit??"";let i=Ze($(P(),e));return B_[t]?.test(i)?i:n||(a.units==="us"?L_[t]??t:t)}var Qi=()=>f({typed:void 0}),Un=e=>`d${e.replaceAll("/","-")}`,Xs=e=>a.typed?.key===Un(e)?a.typed:void 0,Zi=e=>Xs(e)?.text??String($(P(),e)??"");function Pt(e){let{complaint:t}=O();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function ea(e,t,n,o){let{pointer:i}=e,r=l=>{let c=l.target.value,p=e.unit?Yi(i,e.unit,e.unit_before):"";f({typed:{key:Un(i),text:c,unit:p}}),ne(i,W_(e,c,p))};return s`<input
    id=${Un(i)}
    .value=${C(Zi(i))}
    @input=${r}
    @blur=${Qi}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${t??u}
    aria-invalid=${Pt(i)?"true":"false"}
  />`}function W_(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&Mn(t)?`${t.trim()} ${n}`:t}function Se(e,t){let n=Un(e.pointer),o=Pt(e.pointer),i=I_(e.pointer)??e.hint,r=e.unit?` (${Yi(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${ea(e,o||i?`${n}-said`:void 0,t)}
    ${Te(n,o,i)}
  </div>`}function I_(e){let t=$(P(),e),n=Xs(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function Xi(e){let t=e.toLowerCase(),{file:n,shipped:o}=O().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function Fo(e){let{open:t}=O();try{if(await qt(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await mt()})}catch(n){if(!(n instanceof y))throw n;return ss(n)}a.run.file&&(Ee(),ee()),e(t.file)}var pt="/shape/points",zp=500,Dt=(e,t)=>[pt,e,...t?[t]:[]].join("/"),Vp=e=>Array.from({length:e.least},()=>({}));function qp(e){let t=ye(P(),pt),n=j_(),{complaint:o}=O(),i=o?.field===pt&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${Yi(Dt(-1,r.name),r.unit,Jp(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>H_(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${t.length>=zp} @click=${()=>tr(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function H_(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=N_(t),r=l=>{let{name:c,label:p,unit:d}=e.columns[l],h={label:p,pointer:Dt(t,c),unit:d,unit_before:Jp(e,t,c)},g=`${p}, ${n.has(t)?o:`point ${t+1}`}`;return ea(h,i?`point-${t}-said`:void 0,U_(e,t,l),g)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>tr(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Kp(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:u}
  </div>`}function j_(){let e=[...lo(P()),...ai(P())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function N_(e){let{complaint:t}=O();return Pt(Dt(e))??(t?.about===Dt(e)?t.line:void 0)}function Jp(e,t,n){let o=(i,r)=>Ze($(P(),Dt(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function er(e,t){queueMicrotask(()=>document.getElementById(Un(Dt(e,t)))?.focus())}function tr(e,t){let n=[...ye(P(),pt)];n.length>=zp||(n.splice(t,0,{}),Qi(),ne(pt,n),er(t,e.columns[0].name))}function Kp(e,t,n=0){let o=ye(P(),pt).filter((i,r)=>r!==t);Qi(),ne(pt,o.length?o:[{}]),er(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function U_(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!Zi(Dt(t,o))&&!Zi(Dt(t,i));if(r.key==="Enter"&&r.shiftKey)tr(e,t+1);else if(r.key==="Enter"&&n===0)er(t,i);else if(r.key==="Enter"&&t+1<ye(P(),pt).length)er(t+1,o);else if(r.key==="Enter")tr(e,t+1);else if(r.key==="Backspace"&&l&&ye(P(),pt).length>1)Kp(e,t,t>0?1:0);else return;r.preventDefault()}}var ta={weighings:[""]},na=/\.(3mf|gltf|glb)$/i;function nr(e){let t=_t(e);return t?{kind:e,points:Vp(t)}:{kind:e}}var z_=()=>ne("/water",ta),tt=e=>Ce(P(),e),Co=()=>ao(P());function Gp(e){let{open:t,answer:n,is_old:o}=O();return s`${Cn(t,()=>{Fo(e)})} ${En(t)}
    ${t.shipped?u:Gi(a.files?.moulds.find(i=>i.file===t.file))}
    ${tt("shape")&&tt("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${tt("shape")?Q("Shape",Co(),Object.entries(Zl),V_):u}
    <div class="beside ${_t(Co())?"rows":""}">
      <div>
        ${oa()} ${tt("shape")?J_():u} ${tt("mesh")?K_():u}
        ${ia()} ${tt("water")?Y_():u} ${Z_()}
      </div>
      <div class="stays">${Nn(n,o,Qp())} ${X_(e)}</div>
    </div>`}function V_(e){let t={...O().shapes,[Co()]:P().shape};b(O(),{shapes:t,answer:void 0}),ne("/shape",t[e]??nr(e))}function q_(){let{shipped:e,file:t}=O().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function oa(){let e=q_();return Se({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function J_(){let e=Co(),t=_t(e);return s`${mn(e).length?s`<div class="row">
          ${mn(e).map(n=>Se({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${t?qp(t):u}`}function ia(e=Nr(P())){return s`<div class="row">
      ${e?u:Se({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${Se({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${Se({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${Se({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var ra=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],sa=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function K_(){let e=o=>String($(P(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=Pt(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${Q(o,e(i),r,c=>ne(`/mesh/${i}`,c||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:u}`},n=Pt("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:u}
    ${na.test(e("file"))&&!e("unit")?u:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",ra)} ${t("Which way is up","up",sa)}
    ${e("role")==="body"?G_():u}
    <div class="row">
      ${Se({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${Se({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function G_(){let e=$(P(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${Q("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>ne("/mesh/on_board",t==="yes"?!0:void 0))}`}function Y_(){let e=$(P(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":$(e,"/depth")!==void 0?"depth":"below_brim",n=r=>ne("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=$(P(),"/water/weighed_in"),i=t===void 0||t==="brim"?Pt("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${Se({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${Q("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:u}
    ${t==="depth"?Se({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${t==="below_brim"?Se({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${Q("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>ne("/water/weighed_in",r))}
    <div class="row">
      ${ye(P(),"/water/weighings").map((r,l)=>Se({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},Q_(l)))}
    </div>
    ${O().complaint?.field==="/water/weighings"?s`<p class="complaint">${O().complaint.line}</p>`:u}
    <button type="button" @click=${Yp}>One more round</button>`}function Yp(){let e=ye(P(),"/water/weighings").length;ne(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var Q_=e=>t=>{t.key==="Enter"&&(e+1===ye(P(),"/water/weighings").length?Yp():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function Z_(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${tt("shape")?u:e("Add measures, as a check",()=>ne("/shape",nr("block")))}
    ${tt("shape")&&tt("mesh")?e("Leave the measures out",()=>ne("/shape",void 0)):u}
    ${tt("water")?e("Leave the water out",()=>ne("/water",void 0)):e("Add weighed water",z_)}
  </div>`}function Qp(){let e=ai(P()).length;return e?[...uo(P()),e===1?"the other number of a point":`the other numbers of ${e} points`]:uo(P())}function X_(e){let t=String(P().name??"").trim(),n=Xi(t),{open:o,answer:i,is_old:r,complaint:l}=O(),c=i&&!r&&!l&&!Qp().length&&t&&!n,p=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!c} @click=${()=>{Fo(e)}}>
      ${p?"Save the change":"Use this mould"}
    </button>
    ${p?s`<p class="aside">It stays in ${p}.</p>`:u}
    ${t?u:s`<p class="hint">Give it a name first.</p>`} ${aa(t,n)}
    ${l?s`<p class="alarm" role="status">${e$(l.field)}${l.line}</p>
            ${Ji(P(),l.keep,ne)}`:u}`}var aa=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:u;function e$(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=mn(Co()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var t$=200*2**20;async function Zp(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:t}),ne("/name",e.name.replace(/\.\w+$/,"")),e.size>t$){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return b(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await Gl(e,o=>b(t,{share:o}));b(t,{share:1,upload:n.file}),await ed(t)}catch(n){b(t,{complaint:n instanceof y?n.message:String(n)})}}async function ed(e){let t=e.questions+1;b(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await _n({file:n,unit:o,role:i,up:r});t===e.questions&&b(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof y))throw l;if(t!==e.questions)return;let c=o?e.sizes:r$(l.complaint),p=c.length&&!o?void 0:J(l.complaint);b(e,{sizes:c,complaint:p,is_measuring:!1})}}async function n$(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let r=await zl({file:n,unit:o,up:i});t===e.questions&&b(e,{inspection:r})}catch(r){if(!(r instanceof y))throw r;t===e.questions&&b(e,{complaint:J(r.complaint)})}}function o$(e){return e.inspection?s`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?s`<ul>
            ${e.inspection.defects.map(i$)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{n$(e)}}>List every defect of the mesh</button>`}var i$=({text:e})=>s`<li>${e}</li>`;function r$({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>k(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function la(e,t){b(e,t),ed(e)}function td(e,t){let n=l=>{let c=l.target;Zp(c.files?.[0]),c.value=""},o=l=>{l.preventDefault(),Zp(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?s$(a.mesh,e,t):u}`}function s$(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:u}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:u}
    ${e.upload&&!na.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${Q("Unit of the file's numbers",e.unit,i,r=>la(e,{unit:r}))}`:u}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:u}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?o$(e):u}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${Q("Role",e.role??e.answer?.gauge.role,ra,r=>la(e,{role:r}))}
            <h4>Which way is up</h4>
            ${Q("Up",e.up??"",sa,r=>la(e,{up:r||void 0}))}`:u}
    ${e.answer?s`${Nn(e.answer)} ${a$(e,t,n)}`:u}`}var nd=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function a$(e,t,n){let o=String(P().name??"").trim(),i=Xi(o),r=o&&!i&&!e.is_keeping;return s`${oa()} ${ia(nd(e))} ${aa(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>Xp(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>Xp(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Xp(e,t,n){b(e,{is_keeping:!0});try{let o=l$(e,await Yl(e.upload,c$(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await u$(o))return t(o);$n(o,"mesh",O().title),await Fo(n),b(e,{complaint:a.mould?.complaint?.line})}catch(o){b(e,{complaint:o instanceof y?o.message:String(o)})}b(e,{is_keeping:!1})}function l$(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=P();return{...i,...nd(e)||o===void 0?{}:{cavities:o},mesh:n}}async function u$(e){try{return await Ve({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof y&&t.status===422)return!1;throw t}}var c$=e=>dn(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var or={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},od={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function id(e){yt();let t={...od,shape:nr("block")};e==="mesh"?$n(od,"mesh",or[e]):$n(e==="water"?{...t,water:ta}:t,"form",or[e]),rr()}async function rd(e,t){yt(),await Du(e,t),rr()}async function ir(e){yt(),await Mu(e),rr()}function p$(e){$n(e,"form","More about this mould"),rr()}function rr(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function sd(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?td(e,p$):Gp(e)}
  </section>`}var ua=()=>f({chosen_mould:void 0});function Eo(e,t){let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,owned:1,told:t};f({chosen_mould:i}),d$(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function d$(e){try{let[t,n]=await Promise.all([_n({file:e.file}),ce(e.file)]);b(e,{answer:t,owned:e.shipped?1:Number(te(n.text)?.owned??1)})}catch(t){b(e,{complaint:t instanceof y?t.message:String(t)})}}var m$=e=>a.files?.moulds.find(t=>t.file===e);function ad(e,t){let n=()=>t(async()=>{await rd(e.file,e.shipped),ua()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:u} ${e.note?s`<p>${e.note}</p>`:u}
    ${Ki(m$(e.file))}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${e.answer?Nn(e.answer):e.complaint?u:s`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?u:f$(e,t)}
    </div>
  </section>`}async function ld({name:e,mould:t,formula:n}){let o=a.files?.moulds.some(c=>c.file===t&&!c.shipped),[i,r]=await Promise.all([Ve({file:t}),o?ce(t):void 0]),l=Number(te(r?.text??"")?.owned??1);await Ts({name:e,mould:t,formula:n,...ud(i,l)})}function f$(e,t){let n=o=>()=>t(()=>Ts({mould:e.file,name:e.name,formula:o,...ud(e.answer.gauge,e.owned)}));return s`<div>
    <h3>Make a run with it: which base?</h3>
    <ul class="cards">
      ${(a.files?.formulas??[]).map(o=>s`<li>
            <button type="button" ?disabled=${!e.answer} @click=${n(o.file)}>
              <b>${o.name}</b><span>${o.note||o.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function ud(e,t){let n=e.pockets[0];return{cavities:e.pockets.length*t,deep_mm:n.brim_mm-n.floor_mm}}var nn={pour:"base",pipe:"topping",apart:"formula"},h$=[...$o,...bo,...Object.values(nn),"describing","chosen"];function Lo(){let{view:e,run:t,formula_of:n,formulas:o,mould:i,chosen_mould:r}=a;if(e!=="reading")return Ge(e)?{name:e,file:t.file,of:t}:e==="moulds"&&i?{name:"describing",file:i.open.id,of:i}:e==="moulds"&&r?{name:"chosen",file:r.file,of:r}:e!=="formula"?{name:e}:n==="apart"?{name:"formula",file:o.apart?.file,of:o.apart}:{name:nn[n],file:t.file,of:t}}var nt=({name:e,file:t})=>`#${e}${t?`/${t.split("/").map(encodeURIComponent).join("/")}`:""}`;function ca(e){let[t,...n]=e.slice(1).split("/");if(h$.includes(t))try{return{name:t,file:n.map(decodeURIComponent).join("/")||void 0}}catch{return}}function pd(e){if(!e)return{};let t=e.name;return Ge(t)?{run:e.file,view:t}:{run:e.name===nn.pour||e.name===nn.pipe?e.file:void 0,view:Me(t)?t:"reading"}}async function dd({name:e,file:t}){if(!(!(e===nn.apart&&a.formulas.apart?.file===t)&&!await Rs()))try{await g$(e,t)}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o;f({view:"runs",list_complaint:o.message})}}async function g$(e,t=""){let n=e;if(Ge(n))return cd(t,n);let o=["pour","pipe"].find(i=>nn[i]===e);if(o)return await cd(t,"formula"),Ye(o);if(e===nn.apart)return Ro(t);await _$(e,t)}async function cd(e,t){e===a.run.file||!e?f({view:a.run.file?t:"runs",typed:void 0}):await kt(e,t)}async function _$(e,t){let n=e;ua(),yt(),f({view:Me(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,fault:void 0});let o=di(De).find(i=>i.id===t);e==="describing"&&o&&await ir(o),e==="chosen"&&Eo(t),$$()}async function $$(){try{f({files:await mt()}),Ri()}catch(e){if(!(e instanceof y))throw e;f({list_complaint:e.message})}}var Ae={id:""},me,pa=!1,ma=new Map,sr=JSON.parse(sessionStorage.getItem("left")??"{}");function fd(){let e=Lo();pa||!e||me&&nt(me)===nt(e)||(ar(),hd(e))}function hd(e){let t=!me||me.name===e.name&&me.of!==void 0&&me.of===e.of;if(me=e,t)return zn();Ae={id:crypto.randomUUID(),before:location.hash},ma.set(Ae.id,e.of),history.pushState(Ae,"",nt(e)),requestAnimationFrame(w$)}function zn(){me&&(Ae.id||(Ae={id:crypto.randomUUID()}),ma.set(Ae.id,me.of),history.replaceState(Ae,"",nt(me)))}var b$="button, input, select, summary, a[href], [tabindex]",da=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),gd=e=>[...document.querySelectorAll(`#main :is(${b$})`)].filter(t=>da(t)===e);function ar(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?sr[Ae.id]={scroll:scrollY}:sr[Ae.id]={scroll:scrollY,words:da(e),nth:gd(da(e)).indexOf(e)}}function w$(){scrollTo(0,0),document.activeElement?.closest("#main")||_d()}function _d(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function $d(){let{scroll:e,words:t,nth:n=0}=sr[Ae.id]??{scroll:0},o=t===void 0?void 0:gd(t)[n];o?o.focus({preventScroll:!0}):_d(),scrollTo(0,e)}var lr=e=>bd({name:e,file:Ge(e)?a.run.file:void 0});async function bd(e){ar(),await fa(e,()=>{let t=Lo();t&&!(me&&nt(me)===nt(t))&&hd(t)})}async function fa(e,t){pa=!0;try{await dd(e)}finally{pa=!1,t()}}function wd(e){Ae.before===nt(e)?history.back():bd(e)}var md=Promise.resolve();function y$(e,t){ar();let n=()=>history.state?.id!==e?.id;md=md.then(async()=>{if(!t)return zn();if(n())return;let o=e?ma.get(e.id):void 0,i=[a.run,a.formulas.apart].find(r=>r&&r===o);await fa(i?{...t,file:i.file}:t,()=>{me=Lo(),!n()&&(Ae=e??{id:crypto.randomUUID()},zn(),requestAnimationFrame($d))})})}function yd(){history.scrollRestoration="manual",addEventListener("popstate",e=>{Pl()||y$(e.state,ca(location.hash))}),addEventListener("pagehide",()=>{ar(),sessionStorage.setItem("left",JSON.stringify(sr))})}async function vd(){let e=ca(location.hash);e&&(Ae=history.state??{id:""}),await Lc(pd(e)),e&&v$(e)&&await fa(e,()=>{me=Lo(),zn(),requestAnimationFrame($d)}),await Bc()}var v$=e=>!me||nt(me)===nt(e);function Vn(e=a.plan?"The figures below are out of date.":"No figures yet."){let t=a.complaint;return s`<div class="complaints" role="status">
    ${t?s`<p class="alarm">
              <strong>${e}</strong>
              ${ha(t.field)}${J(t)}
            </p>
            ${t.is_fault?s`<button type="button" @click=${ga}>Ask again</button>`:u}
            ${Zt("run")?Ji(a.run.now,t.keep,(n,o)=>re("run",n,o)):u}
            ${k$()?s`<button type="button" @click=${T$}>Go to the field</button>`:u}`:u}
  </div>`}function ha(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function ga(){ee(),a.run.failed&&Le()}function k$(){if(kd())return!0;let e=Xt();return e?document.activeElement!==e:x$()}var x$=()=>a.view!=="set-up"&&Zt("run")&&a.complaint!==void 0&&a.complaint.field!=="",kd=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&Zt(e));function T$(){let e=Xt(),t=kd();if(e)return Bi(e);t?Ye(t):lr("set-up"),R$(()=>Bi(Xt()))}function R$(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var xd=()=>[...bi().map(e=>Cn(e)),...$i().map(En)];function Td(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${xd()}${Vn()}
      <p>Reading the formula ...</p>
      ${$a(e)}`;let n=a.plan&&Ai(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${xd()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${S$(e)}</p>
    <div class="choice">${$a(e)}${e==="apart"?A$():u}</div>
    ${Gi(a.files?.formulas.find(i=>i.file===t.file))} ${P$(e,o,n)} ${F$(e)}
    ${vp(e)} ${Rp(e,o)} ${Ap(e)} ${cp(e)}
    <div class="choice">${$a(e)}</div>`}var _a=()=>String(a.run.now.name??a.run.file);function S$(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${_a()}".${n}`:o?`Base and topping of "${_a()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${_a()}".${n}`}function $a(e){let t=e==="apart";return s`<button type="button" class="strong" @click=${()=>wd(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function A$(){return s`<button type="button" @click=${()=>{Ss("pour")}}>Use it as the base</button> ${je()?s`<button type="button" @click=${()=>{Ss("pipe")}}>Use it as the topping</button>`:u}`}function P$(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...D$(e,n),...M$(e,t)].map(([o,i,r])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${r?qc(r):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${O$(e)}
  </section>`}function D$(e,t){let n=e==="pipe"?Ps(t,t.whippings[0]):"";return n?[["For one whipping",n]]:se(t.whole)?[["For one batch",ke(t.whole,t.batch)]]:[]}function M$(e,t){let n=Qt(e).length?" \u26A0":"";return[["Fats",R(M(a.units,t.fats_g))],["Superfat as weighed",`${lt(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...Fn(t).map(({one:o})=>[o.name,R(ut(a.units,o))])]}function O$(e){let t=a.complaint;if(!t)return s`<div role="status"></div>`;let n=Zt(e),o=n&&t.field!==""&&document.activeElement!==Xt();return s`<div role="status" class="asks">
    <p class="alarm">
      <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
      ${n?"":"Not about this formula: "}${ha(t.field)}${J(t)}
    </p>
    ${t.is_fault?s`<button type="button" @click=${ga}>Ask again</button>`:u}
    ${o?s`<button type="button" @click=${()=>Xt()?.focus()}>Go to the field</button>`:u}
  </div>`}function F$(e){return s`<section class="card" aria-label="Name">
    ${m({label:"Name",of:e,at:"/name",wide:!0})}
    ${D({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>m({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Bo=[],Wo=()=>Bo.at(-1);function ba(e){Bo=[...Bo,e],f({list_told:e.words}),H(e.words)}async function Ad(){let e=Wo();e&&(await e.undo(),Bo=Bo.slice(0,-1),f({list_told:""}),H("Undone"),await qn())}var qn=async()=>f({files:await mt()});async function Pd(e,t){let{$schema:n,...o}=JSON.parse((await ce(t.file)).text),i=`${t.name||t.file}, copy`,r={...o,name:i,...e.name==="run"?{id:crypto.randomUUID()}:{}},{file:l}=await $t({kind:e,name:e.new_name(co(e,r)),text:X(r),from:t.file});return await qn(),ba({words:`Copied ${t.name||t.file}.`,undo:async()=>{await Cr(l,!0)}}),l}var Dd=e=>/(\.(run|formula))?\.json$/.exec(e)?.[0]??"",Io=e=>Nt(e).slice(0,-Dd(e).length||void 0),Md=(e,t)=>jt(e)+t+Dd(e),Rd=e=>[a.run,...le.map(t=>a.formulas[t])].find(t=>t?.file===e);async function Od(e,t,n){let o={name:t.name,note:t.note,stem:Io(t.file)};await Sd(e,t.file,n),await qn();let i=Md(t.file,n.stem);ba({words:`Changed ${n.name||i}.`,undo:()=>Sd(e,i,o)})}async function Sd(e,t,{name:n,note:o,stem:i}){let r=Rd(t),l=r??await Ke(e,t),{note:c,...p}=l.now,d=o?{...p,name:n,note:o}:{...p,name:n};if(X(d)!==X(l.now)&&(r&&Jt(),ve(l,d),await qt(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let h=Md(t,i);if(h===t)return;let{renamed_in:g}=await Wl(t,h);r&&hu(r,h);for(let w of g){let v=Rd(w);v&&await gu(v)}}async function Fd(e,t){let{removed:n}=await Cr(e.file,t);a.run.file===e.file&&ui(),await qn(),ba({words:`Removed ${e.name||e.file}.`,undo:async()=>{await Il(n)}})}async function be(e){f({list_complaint:""});try{await e()}catch(t){f({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof y&&await qn().catch(()=>{})}}var wa=()=>{be(Ad)};function Jn(e){return s`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&Wo()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${wa}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(t=>s`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Cd=new Map,Ed=Promise.resolve();function Ld(e,t=""){let n=`${e}
${t}`,o=Cd.get(n);return o||(o=Ed.then(()=>C$(e)),Ed=o,Cd.set(n,o)),o}async function C$(e){try{let t=await ft({kind:"glb",gauge:{file:e}}),n=gn(await t.arrayBuffer());return fo(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof y)return;throw t}}var ya=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{Ld(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void Ue(u,this);let{left:n,right:o,floor:i,brim:r,loops:l}=t,c=.04*Math.max(o-n,r-i),p=[n-c,-r-c,o-n+2*c,r-i+2*c];Ue(s`<svg viewBox=${p.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${mo(l)} />
      </svg>`,this)}};customElements.define("mould-picture",ya);function Kn(e){let{one:t,facts:n,picture:o,open:i}=e,r=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return s`<li class="file">
    <button type="button" class="open" @click=${()=>{be(i)}}>
      ${o?s`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${l}</b>${n.length?s`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${t.shipped?"built-in":t.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${r?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>E$(e,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?L$(e,r):u}
  </li>`}function E$({one:e},t){let{file:n,name:o,note:i}=e;f({list_open:t?{file:n,name:o,note:i,stem:Io(n)}:void 0})}function L$(e,t){let{kind:n,one:o}=e,i=s`<button type="button" @click=${()=>{be(()=>W$(n,o))}}>Copy</button>`;if(o.shipped)return s`<div class="acts"><div class="choice">${i}</div></div>`;let r=["name","note"].every(c=>o[c]===t[c])&&Io(o.file)===t.stem,l=()=>{be(()=>I$(e,t))};return s`<div class="acts">
    ${Ki(o)} ${va("Name",t,"name")} ${va("Note",t,"note")}
    ${va("Name of the file",t,"stem")}
    <div class="choice">
      <button
        type="button"
        class="strong"
        ?disabled=${r||!t.name.trim()||!t.stem.trim()}
        @click=${l}
      >
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{be(()=>Bd(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?B$(o,t):u}
  </div>`}function va(e,t,n){let o=`list-${n}`,i=r=>b(t,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${C(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function B$(e,t){return s`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{be(()=>Bd(e,t,!0))}}>Remove it even so</button>
  </div>`}async function W$(e,t){let n=await Pd(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:Io(n)}}),requestAnimationFrame(()=>document.getElementById("list-name")?.select()))}async function I$({kind:e,one:t},{name:n,note:o,stem:i}){await Od(e,t,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function Bd(e,t,n){let o=e.used_by??[];if(o.length&&!n)return b(t,{used_by:o});try{await Fd(e,n),f({list_open:void 0})}catch(i){let r=i instanceof y?i.answer.used_by:void 0;if(!r)throw i;b(t,{used_by:r})}}var ka=e=>b(a.new_formula,e);function Wd(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>be(async()=>{await i(e.trim()),ka({name:"",copied:""})});return s`${Jn("Formulas")}
    <section aria-label="Formulas">
      <ul class="cards">
        ${n.map(H$)}
      </ul>
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${C(e)}
            @input=${i=>ka({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(Wc)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>ka({copied:i.target.value})}
          >
            <option value="" .selected=${C(t==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${C(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>Ic(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>`}function H$(e){let t=e.changed?[`changed ${On(e.changed)}`]:[];return Kn({kind:fn,one:e,facts:t,open:()=>Ro(e.file)})}function j$(e){yt(),Eo(e,`Saved in ${e}.`)}function Hd(){let{chosen_mould:e}=a;return s`${Jn("Moulds")}
  ${e?ad(e,be):sd(j$)??s`${U$()} ${N$()}`}`}function N$(){let e=(a.files?.moulds??[]).filter(t=>!t.shipped);return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    <ul class="cards">
      ${e.map(t=>Id(t,q$(t.file)))}${a.catalogue.map(t=>Id({file:t.path,name:t.name,note:"",shipped:!0},[`${R(ue(a.units,t.brimful_ml))}, ${G(t.cavities,"cavity","cavities")}; ${t.description}`]))}
    </ul>
  </section>`}var Id=(e,t)=>Kn({kind:De,one:e,facts:t,picture:e.file,open:()=>Promise.resolve(Eo(e.file))});function U$(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${z$()}
    <div class="choice">
      ${Object.entries(or).map(([e,t])=>s`<button type="button" @click=${()=>id(e)}>${t}</button>`)}
    </div>
  </section>`}function z$(){return di(De).map(e=>{let t=String(te(e.text)?.name??"").trim()||V$(e)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>be(()=>ir(e))}>Continue</button>
        <button type="button" @click=${()=>{Vt(De,e.id),L()}}>Discard it</button>
      </div>
    </div>`})}var V$=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function q$(e){let t=fc(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[R(ue(a.units,t.brimful_ml)),G(t.cavities,"cavity","cavities")]:["measuring ..."]}function jd(){let e=J$();if(e)return e;let{run:t}=a,n=a.formula_of==="apart"||!(U(t)||t.theirs||t.failed);return a.view==="formula"&&n?K$():t.theirs?ur(`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`):t.failed?ur(`Not saved: ${t.failed}`):U(t)?Ud:xa(t.shipped?Nd:`Saved in ${t.file}`)}var Nd="Built-in example: your first change is saved as a copy.",Ud={words:"Saving ...",is_kept:!1},xa=e=>({words:e,is_kept:!0}),ur=e=>({words:e,is_kept:!1,is_failed:!0});function J$(){let e=a.formulas.apart?"apart":"run",t=at(e);if(t)return ur(`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&U(o)))return a.complaint?.file===""?ur(`Not saved: ${a.complaint.problem}`):Ud}function K$(){let e=a.formulas[a.formula_of];return xa(e?e.shipped?Nd:`Saved in ${e.file}`:"")}function cr(){let{view:e,mould:t,past:n,future:o}=a;return e==="moulds"&&t?zd(t,Ou,Fu):Me(e)?{undo:Wo()&&wa}:zd({past:n,future:o},gi,wu)}var zd=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var Vd={runs:"Runs",formulas:"Formulas",moulds:"Moulds"},G$={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},Y$="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",Q$="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Ta=e=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${F`<path d=${e} />`}</svg>`;function qd(){let e=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?u:s`<nav class="rail-lists" aria-label="Lists">
                ${$o.map(t=>Jd(t,Vd[t],s`${Vd[t]}`))}
              </nav>
              ${X$()}`}
    </div>
    ${e?u:eb()}
  </header>`}var Z$={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`};function X$(){let e=t=>()=>{f({units:t}),localStorage.setItem("units",t)};return s`<div class="tools units" role="group" aria-label="Units">
    ${["metric","both","us"].map(t=>s`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${e(t)}>
          ${Z$[t]}
        </button>`)}
  </div>`}function eb(){let{undo:e,redo:t}=cr();return s`<div class="bar">
    ${a.run.file?tb():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${Ta(Y$)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${Ta(Q$)}<span>Redo</span></button>
    </div>
    ${a.run.file?rb():u}
  </div>`}function tb(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${bo.map(nb)}</div>
  </nav>`}function nb(e){let[t,n]=G$[e],o=ob(e);return Jd(e,o?`${t}, ${o.words}`:t,s`${Ta(n)}<span>${t}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function ob(e){if(e==="watch"&&Oc())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="set-up"&&ib())return{sign:"\u25CB",words:"missing"}}var ib=()=>a.complaint!==void 0&&!a.complaint.is_fault;function Jd(e,t,n){let o=a.view===e;return s`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":u}
    @click=${()=>{lr(e)}}
  >
    ${n}
  </button>`}function rb(){let{words:e,is_kept:t,is_failed:n}=jd();return s`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}function Sa(){let e="/lye_pot",t=_("run",e)!==void 0;return!t&&!je()?u:s`${Es(e,"Make one pot of lye solution for both",t,{})}
  ${t?m({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Kd(){return s`<section class="shelf" aria-labelledby="extras-title">
    <h2 id="extras-title">Pot, bottles, label</h2>
    ${Sa()} ${Aa()} ${Pa()}
  </section>`}function Aa(e){let t={at:"/bottles"},n=S(t);return D({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is shared over the batters at one rate, never by
          halves.${e&&xe(e)?` Weights are of ${xe(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${E(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${V(t,i,l)}
            </div>
            ${W("run",r)}
            <div class="row">
              ${m({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${m({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?sb(e,i,l):u}
          </div>`})}
        ${N(t,"Use up a bottle",()=>j(t,{name:"",holds:""},"bottle"))}`})}function sb(e,t,n){let o=e.bottles?.[t];return o?.name!==n?u:o.parts.map((i,r)=>T({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${k(i.percent_of_batter,2)} % of the batter`,shown:Y(a.units,_e(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${r}.g`}))}function Pa(){return Re({at:"/label",name:"the label",title:"For the label",add:"Draft the label",blank:{market:""},body:ab})}function ab(){let e=_("run","/label/market"),t=_("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${x({question:"Where it is sold",at:"/label",asked_at:"/label/market",chosen:e,answers:[["EU","In the EU"],["US","In the US"]],puts:lb})}
  ${x({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:ub})}
  ${t==="weighed"?cb():s`<div class="row">
          ${m({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${m({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${m({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${e==="EU"||_("run",Ra)!==void 0?Es(Ra,"With the e mark",_("run",Ra)===!0,!0):u}`}var Ra="/label/e_mark";function lb(e){return{...K("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function ub(e){let t=K("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function cb(){let e={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${S(e).map((t,n)=>s`<div class="row" id=${E(e,n)}>
            ${m({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${V(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${N(e,"One more piece",()=>j(e,"","piece"))}`}function Gd(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,c=r?"A bar on average, ":"",p=d=>c?c+d.toLowerCase():d;return s`<section class="piece" aria-labelledby="piece-title">
    <h2 id="piece-title">The piece</h2>
    ${T({key:"piece.fresh",label:p("Fresh"),shown:M(a.units,n),of:"piece.fresh_g"})}
    ${o===null?u:T({key:"piece.cured",label:p("Cured"),shown:M(a.units,o),of:"piece.cured_g"})}
    ${r?T({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:M(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
    ${i===null?u:T({key:"piece.label",label:"Net weight for the label",shown:M(a.units,i,0),of:"piece.label_g"})}
    ${l?T({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(d=>k(d,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
    ${t&&t.amount!==null?s`${T({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
          ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:u}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
    ${db(e)} ${pb(e)} ${Pa()}
  </section>`}function pb(e){let t=e.label;if(!t)return u;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:u;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}function db(e){let t=e.piece.cost?.materials.map(o=>o.name)??[];if(!t.length)return u;let n=o=>`/money/prices/${o.replaceAll("~","~0").replaceAll("/","~1")}`;return D({name:"prices",pointers:["/money/prices"],summary:"Prices paid",body:()=>s` ${t.map(o=>s`<div class="row">
            ${m({label:`${o}, paid`,at:`${n(o)}/paid`,optional:!0,short:!0})}
            ${m({label:`for (pack of ${o})`,at:`${n(o)}/for`,unit:"g",optional:!0,short:!0})}
          </div>`)}`})}var[Qd,Ma]=[440,270],[Ho,Da,pr,Gn]=[64,Qd-10,10,Ma-52],mb=6,fb=8;function Yd(e){let t=e/mb,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var Yn=e=>k(e,1);function Zd(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=c=>Yn(Ho+(Da-Ho)*c/n),r=c=>Yn(Gn-(Gn-pr)*c/o),l=e.map(({depth_mm:c,volume_ml:p})=>`L${i(c)} ${r(p)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${Qd} ${Ma}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${Yd(n).map(c=>F`<path class="grid" d="M${i(c)} ${pr}V${Gn}" />
            <text x=${i(c)} y=${Gn+20} text-anchor="middle">${Yn(c)}</text>`)}
      ${Yd(o).map(c=>F`<path class="grid" d="M${Ho} ${r(c)}H${Da}" />
            <text x=${Ho-8} y=${r(c)} text-anchor="end" dominant-baseline="middle">${Yn(c)}</text>`)}
      ${F`<text x=${(Ho+Da)/2} y=${Ma-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(pr+Gn)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${pr}V${Gn}" />`}
    </svg>
    ${hb(e)}`}function hb(e){let t=Math.max(1,Math.round(e.length/fb)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
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
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:r})=>s`<tr>
              <th scope="row">${Yn(o)}</th>
              <td>${Yn(i)}</td>
              <td>${k(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var dr=Math.PI/8,gb=500,Oa=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#r="";#s=!1;#a="";#l="Drawing ...";#c=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#c),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#a="",URL.revokeObjectURL(this.#r)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#d()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#p()===this.#a||(window.clearTimeout(this.#c),this.#c=window.setTimeout(()=>{this.#d()},gb))}#p(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#d(){let t=this.#p();if(t!==this.#a){try{let n=await ft(JSON.parse(t));if(t!==this.#p()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#t?.show(gn(await n.arrayBuffer())),this.#a=t,this.#l=""}catch(n){if(!(n instanceof y))throw n;this.#l=n.message}this.#u()}}#_(t){t(),this.#l="Drawing ...",this.#u(),this.#d()}#u(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#l}</p>`;Ue(s`${t} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#e]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-dr)}>Turn left</button>
        <button type="button" @click=${t(dr)}>Turn right</button>
        <button type="button" @click=${n(dr)}>From above</button>
        <button type="button" @click=${n(-dr)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#r?s`<img
              src=${this.#r}
              alt="${this.#n[this.#e].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",Oa);function Xd(e){let{measured:t}=a;if(!t)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${T({key:"mould.brimful",label:"To the brim",note:`${R(ae(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:ue(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${Zd(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${_b(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function _b(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var Qn=e=>b(a.printing,e);function em(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function tm(e){if(!a.printing.is_working){Qn({is_working:!0,told:"Making it ..."});try{await $b(),Qn({told:await e()})}catch(t){Qn({told:t instanceof Error?t.message:String(t)})}Qn({is_working:!1})}}async function $b(){await bn();let e=at("run");if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var Mt=(e,t)=>()=>tm(async()=>{let n=URL.createObjectURL(await ft(t));return em(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),bb=e=>()=>tm(async()=>(em(await Kl(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),wb=e=>{Qn({paper:e}),localStorage.setItem("paper",e)},yb=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function nm(e){let{batch:t}=a.printing;return se(e)&&t<=e.pieces.batches?t:0}function vb(e){if(!se(e))return u;let t=nm(e),n=i=>Qn({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${C(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${yb(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${ke(e,r)}`))}
      </select>
    </div>
  </div>`}function om(e){let{paper:t,is_working:n,told:o}=a.printing,i=a.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),r={file:a.run.file,run:a.run.now},l=a.measured?.mould,c={file:l,"below-brim":`${e.pour.below_brim_mm} mm`},p=nm(e),d={plan:r,paper:t,...p?{batch:String(p)}:{}},h=(g,w,v="")=>s`<button type="button" class=${v} ?disabled=${n} @click=${()=>{w()}}>${g}</button>`;return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${Q("Paper",t,[["A4","A4"],["Letter","Letter"]],wb)}
    ${vb(e)}
    <div class="choice">
      ${h("Bench sheet, to print",bb({kind:"sheet",...d}),"strong")}
      ${a.files?.makes_pdf?h("Bench sheet, PDF",Mt(`${i}${p?` batch ${p}`:""}.pdf`,{kind:"sheet-pdf",...d})):""}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?h("Label draft",Mt(`${i} label.txt`,{kind:"label",plan:r})):""}
      ${h("Drawing of the pour, true size",Mt(`${i} pour.svg`,{kind:"picture",plan:r}))}
      ${h("Drawing of the piece",Mt(`${i}.svg`,{kind:"piece",plan:r}))}
      ${h("Whole piece, GLB (3D viewer)",Mt(`${i}.glb`,{kind:"glb",plan:r}))}
      ${h("Whole piece, STL (3D printing)",Mt(`${i}.stl`,{kind:"stl",plan:r}))}
      ${l?s`${h("Filled cavity, GLB (3D viewer)",Mt(`${i} cavity.glb`,{kind:"glb",gauge:c}))}
            ${h("Cavity, STL (3D printing)",Mt(`${i} cavity.stl`,{kind:"stl",gauge:{file:l}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${R(ae(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var im=e=>om(e);var Fe={at:"/decorations"},mr=e=>`${Fe.at}/${e}`,on=e=>z("run",`${mr(e)}/name`).trim()||`Decoration ${e+1}`,we=()=>$(a.run.now,"/cut")!==void 0,fr=e=>["mould","rod","drizzle"].find(t=>_("run",`${e}/${t}`)!==void 0),jo=e=>["per_piece","per_cast"].find(t=>_("run",`${e}/${t}`)!==void 0);var Pe="/batch",Zn="/pots",No=e=>`${e}/moulds_owned`;function Fa(){let e=[Pe,Zn,No("/pour")];return D({name:"batches",pointers:e,summary:`Batches, pots, moulds owned${kb()}`,body:()=>s` <p class="hint">What you leave blank sets no limit.</p>
        ${W("run",Pe)} ${W("run",Zn)}
        <div class="row">
          ${m({label:"Moulds like this owned",at:No("/pour"),count:!0,optional:!0,short:!0,hint:"Else as many as the mould's own file says."})}
          ${m({label:"Pot for the base holds",at:`${Zn}/holds`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to two thirds."})}
          ${m({label:"Lye jug holds",at:`${Zn}/lye_jug`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to half."})}
          ${xb()} ${Rb()}
        </div>
        ${x({question:"Cavities at each filling",at:Pe,asked_at:`${Pe}/fill`,chosen:_("run",`${Pe}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>rm("fill",t==="full"?t:void 0)})}`})}function kb(){let[e,t,n,o,i]=[`${Pe}/pieces`,`${Pe}/casts`,`${Zn}/holds`,`${Zn}/lye_jug`,No("/pour")].map(l=>z("run",l)),r=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`,n&&`pot of ${n}`,o&&`lye jug of ${o}`,i&&G(Number(i),"mould")].filter(Boolean);return r.length?`: ${r.join(", ")}`:""}function rm(e,t){let n=K("run",Pe,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function xb(){let e=_("run",`${Pe}/casts`)!==void 0,t=(n,o)=>m({label:o,at:`${Pe}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0});return we()?_("run",`${Pe}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${Tb}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function Tb(){ie("run","Counted in loaves",Pe,rm("pieces",void 0))}function Rb(){let e=`${Pe}/whippings`;return!je()&&_("run",e)===void 0?u:m({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var Sb=500,Ca=()=>$(a.run.now,"/cut")===void 0&&(a.plan?.pour.brimful_ml??0)>=Sb;function Ab(){ie("run","Cut it into bars","/cut",{bar:{},kerf:""},en(oe("run","/cut/bar")))}function Pb(){ie("run","Left whole","/cut",void 0,Z("cut-into-bars"))}function Ea(){return Ca()?s`<div class="choice">
    <button type="button" id="cut-into-bars" @click=${Ab}>Cut it into bars</button>
  </div>`:u}var Db={loaf:{thickness:""},slab:{length:"",width:""}};function Mb(){let e=_("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var Ob={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function hr(){let e=Mb(),t=(o,i)=>m({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=z("run","/cut/along");return s` ${x({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Db[o]})}
    <div class="row">
      ${e==="loaf"?m({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${e==="slab"?["length","width"].map(o=>m({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${m({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf is what each cut wastes: 0 mm for a wire.</p>
    ${e?x({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:Ob[e],puts:o=>o||void 0}):u}
    <button type="button" @click=${Pb}>Leave it whole</button>`}function Ot(e){let{whole:t,batch:n}=e,o=jc(t,n);return s`<h3 class="batch-head of-plan ${An(t)?"of-sizes":""}">
      One batch: ${ke(t,n)}${o?s`<span>, ${o}</span>`:u}
    </h3>
    ${An(t)?s`<div class="sizes">
            ${Q("Which batch is weighed",String(As(t)),t.batches.map((i,r)=>[String(r),ke(t,i)+(i.count>1?`, ${So(i.count)}`:"")]),Fb)}
          </div>`:u}`}function Fb(e){let t=a.plan;f({batch:Number(e)}),H(`One batch: ${ke(t,t.batches[a.batch])}`)}function sm(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(p=>`${An(e)?`${p.count} of `:""}${ke(e,p)}`),l=`Made in ${t} batches${An(e)?": ":" of "}${Pn(r)}; ${Pi(n,o)}.`,c=e.batch_limits.filter(p=>p.sets);return s`<div class="batches-told of-plan">
    ${se(e)?s`<p><b>${l}</b></p>`:u}
    ${i>0?s`<p>
            ${G(i,e.cut?"bar":"piece")} beyond the order ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${c.length?s`<p><span class="called">What sets a batch:</span> ${c.map(p=>p.text).join(" ")}</p>`:u}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(p=>p.text).join(" ")}</p>`:u}
  </div>`}var lm=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function um(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(p=>!p.buried&&p.cavity_fills>0),r=i?dm(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,c=e.pipe?Cb(e,t,n,l):0;return{brim:n,line:o,topping:c,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+c+l)}}function Cb(e,t,n,o){let i=Dn($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,c]=Zr(t,t.brim-.01),p=Math.PI/4*(c-l)**2;return 1500*e.pipe.visible_each_ml/p}function am(e,t){let[n,o]=Zr(e,e.brim-.01),i=(n+o)/2,r=3,l=h=>(o-n)/2*Math.sqrt(1-(h/(r+.3))**2),c=h=>-(t.brim+t.topping*h/r),p=(h,g,w)=>{let v=i+w*(Math.max(l(h),l(g))+(o-n)*.035);return`C${v} ${c(h)} ${v} ${c(g)} ${i+w*l(g)*(g?.94:1)} ${c(g)}`},d=`M${n} ${c(0)}`;for(let h=0;h<r;++h)d+=p(h,h+1,-1);d+=`L${i+l(r)*.94} ${c(r)}`;for(let h=r;h>0;--h)d+=p(h,h-1,1);return`${d}Z`}var Uo=(e,t)=>e===t?`shaded ${t}`:"plain";function rn(e,t,n=u){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=um(t,o),r=o.right-o.left,l=Math.max(6,r*.1),c={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
      <svg viewBox="${c.x} ${c.y} ${c.w} ${c.h}" role="img" aria-label=${Ub(e,t)}>
        ${Eb(e)} ${Lb(e,t,o,i)} ${Wb(e,t,o,i)} ${Ib()}
        ${Hb(e,t,o,i)} ${Nb(e,t,o,i)}
        ${F`<line class="pour-line" x1=${c.x+1} x2=${c.x+c.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${c.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${c.x+c.w-1} y1=${-i.brim} y2=${-i.brim} />`}
      </svg>
      ${n}
    </div>
    ${e==="decorate"&&La(t)?s`<p class="hint">${La(t)}</p>`:u}`}function cm(e,t){let n=a.measured.outline,o=um(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function Eb(e){return F`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${lm(pm())} /></clipPath>
  </defs>`}function pm(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function Lb(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(c=>Bb(c,n)):[[o.line,o.line]]).map(([c,p])=>`M${n.left} 0V${-c}L${n.right} ${-p}V0Z`);return F`<g clip-path="url(#cavity-${e})">${l.map((c,p)=>F`<path class="whole" d=${c} /><path class="${Uo(i,"pour")} band${p%3}" d=${c} />${i==="pour"&&p%2===0?F`<path fill="url(#hatch-${e})" d=${c} />`:u}`).reverse()}</g>`}function Bb(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function Wb(e,t,n,o){if(!t.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return F`<g clip-path="url(#cavity-${e})"><rect class=${Uo(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function Ib(){return F`<path class="wall" fill-rule="evenodd" d=${lm(pm())} />`}function Hb(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((c,p)=>(c.buried?.embeds??[]).map(d=>({embed:d,one:c,i:p})))??[];return F`
    ${t.pipe?F`<path class=${Uo(e,"pipe")} d=${am(n,o)} />${e==="pipe"?F`<path fill="url(#dots-pipe)" d=${am(n,o)} />`:u}`:u}
    ${o.ball?F`<circle class=${Uo(e,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:c,one:p,i:d})=>jb(Uo(e,"decorate"),i,c,p,d))}`}function jb(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],c=Dn($(a.run.now,`/decorations/${i}/rod/diameter`)),p=Dn($(a.run.now,`/decorations/${i}/rod/length`));if(!c||!p)return F`<circle class=${e} cx=${r} cy=${-l} r=${dm(o)} />`;let[d,h]=[n.turn[0][0],n.turn[2][0]],g=Math.min(1,Math.hypot(d,h)),w=c/2*Math.sqrt(1-g*g),v=p*g+2*w,A=-180/Math.PI*Math.atan2(h,d);return F`<rect class=${e} x=${-v/2} y=${-c/2} width=${v} height=${c} rx=${w} ry=${w?c/2:0}
    transform="translate(${r} ${-l}) rotate(${A})" />`}var dm=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function La(e){let t=(e.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function Nb(e,t,n,o){if(e!=="cut"||!t.cut)return u;let i=Math.max(t.cut.rows,t.cut.columns);return F`${Array.from({length:i-1},(r,l)=>{let c=n.left+(n.right-n.left)*(l+1)/i;return F`<line class="knife" x1=${c} x2=${c} y1=${-o.line} y2="0" />`})}`}function Ub(e,t){let n=R(ae(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${La(t)}`.trim()}var zb={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Ne={at:"/dust"},Ba=e=>z("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function mm(){j(Ne,{name:""},"Dust")}function Vb(e){return _("run",`${e}/per_piece`)!==void 0?"piece":_("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function fm(e){let t=`/dust/${e}`,n=Vb(t),o=Ba(e),i=r=>({...K("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...zb[r]});return s` ${m({label:"Which powder",at:`${t}/name`})}
  ${x({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?m({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?s`<div class="row">
            ${m({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${m({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${m({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${St("run",t,o)}`}var qb={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function Jb(e){return["on_top","buried"].find(t=>_("run",`${e}/${t}`)!==void 0)??"by number"}function hm(e,t){let n=Jb(e),o=i=>({...K("run",e,["on_top","buried"]),...qb[i]});return fr(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:D({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${x({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?Kb(`${e}/on_top`):n==="buried"?Yb(e,t):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function Kb(e){return s`<div class="row">
      ${m({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${m({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${gm(e,"It is turned")}`}function gm(e,t){let n=o=>m({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return D({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var Gb=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function Yb(e,t){let n=`${e}/buried`,o=_("run",`${n}/places`)!==void 0?"said":_("run",`${n}/arrange`),i=_("run",`${n}/placed`);return s`${W("run",n)}
  ${m({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between it and wall, floor, pour line and the next one."})}
  ${x({question:"When is it set in?",at:`${n}/placed`,chosen:i,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:r=>r})}
  ${x({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:o,answers:Gb,puts:r=>Qb(e,r)})}
  ${o==="said"?Xb(e,t):u}`}var _m={x:"",y:"",height:""};function Qb(e,t){let n=K("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{..._("run",e),buried:{...n,arrange:t}};let o=Number(_("run",`${e}/${jo(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>_m);return{...K("run",e,["per_piece","per_cast"]),[$m(e)]:i.length,buried:{...n,places:i}}}var $m=e=>we()?"per_cast":jo(e)??"per_piece";function Zb(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>B(r,`${e}/${l}`,void 0),n);return B(i,`${e}/${$m(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function Xb(e,t){let n=Zb(e),o=S(n);return s`<p class="hint">
      From the cavity's middle to its own: x to the right in the drawing, y away from you, either below zero for the
      other side. The height is that of its lowest point above the cavity's.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,c=p=>m({label:`Place ${r+1}: ${p}`,at:`${l}/${p}`,unit:"mm",short:!0});return s`<div class="part" id=${E(n,r)} role="group" aria-label="Place ${r+1} of ${on(t)}">
        ${W("run",l)}
        <div class="row">
          ${c("x")} ${c("y")} ${c("height")} ${V(n,r,`place ${r+1} of ${on(t)}`)}
        </div>
        ${gm(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${N(n,"Add a place",()=>j(n,_m,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var bm=e=>`${e} made`;function ew(){let e=mr(S(Fe).length),t=we()?{}:{per_piece:""};for(let n of[bm(e),`${e} where`])up("run",n);j(Fe,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function gr(){let[e,t]=[S(Fe).length>0,S(Ne).length>0];return s`<div class="choice">
    ${N(Fe,e?"Add another decoration":"Add a decoration",ew)}
    ${N(Ne,t?"Add another dust":"Add a dust",mm)}
  </div>`}function wm(e){let t=mr(e);return s` ${W("run",t)} ${iw(t)}
    <div class="row">
      ${tw(t)} ${m({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${m({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
      ${m({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
      ${m({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}
    </div>
    ${hm(t,e)} ${St("run",t,on(e))}`}function tw(e){let t=jo(e),n=vt("run",`${e}/buried/places`).length;if(n&&n===_("run",`${e}/${t}`)&&!(we()&&t==="per_piece"))return s``;let o=t==="per_cast"?we()?"In each loaf":"In each cast":we()?"On each bar":"On each piece",i=r=>({...K("run",e,["per_piece","per_cast"]),[r]:t?_("run",`${e}/${t}`):""});return s`${we()?x({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${t?m({label:o,at:`${e}/${t}`,count:!0,short:!0}):u}`}var nw={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function ow(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle",...t==="drizzle"?["on_top","buried"]:[]];return{...K("run",e,n),...nw[t]}}function iw(e){let t=fr(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","time_per_tray_fill"].map(o=>`${e}/${o}`);return D({name:bm(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${m({label:"What it is called",at:`${e}/name`})}
          ${m({label:"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${x({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>ow(e,o)})}
        ${t?rw[t](e):u}
        ${m({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var rw={mould:sw,rod:e=>s`<div class="row">
      ${m({label:"Rod, across",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${m({label:"Rod, long",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${m({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${m({label:"Thick",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function sw(e){let t=_("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${In("Cast in",`${e}/mould`,a.files?.moulds)}
  ${m({label:"Trays like this owned",at:No(e),count:!0,optional:!0,hint:"Else as many as the mould's own file says."})}
  ${x({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?m({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):m({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${x({question:"What makes one?",at:`${e}/cast_as`,chosen:_("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var zo=()=>S(Fe).length+S(Ne).length>0;function ym(){return s`<section class="lane unused" aria-label="Decorate">
    <h2>Decorate</h2>
    <p>Nothing is set on or in it${Ca()?", and it is left whole":""}.</p>
    ${gr()} ${Ea()}
  </section>`}function vm(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function km(e){let t=S(Fe).flatMap((n,o)=>{let i=aw(e,o);return i?[{one:i,i:o}]:[]});return s`<div class="side">${t.map(({one:n})=>lw(e,n))} ${rn("decorate",e)}</div>
    <div class="weights">
      ${t.map(({one:n,i:o})=>uw(e,n,o))}
      ${e.dust?.length&&S(Ne).length?s`${se(e.whole)?Ot(e):u}
              <h3>Weigh for dusting</h3>`:u}
      ${S(Ne).map((n,o)=>pw(e,o))}
    </div>
    ${Wa()}`}var aw=(e,t)=>vm(e.decorations,S(Fe),z("run",`/decorations/${t}/name`),t);function Wa(){let e=(t,n,o,i)=>s`<section class="questions" id=${E(t,n)} aria-labelledby="${E(t,n)}-title">
      <div class="part-head">
        <h3 id="${E(t,n)}-title">${o}</h3>
        ${V(t,n,o)}
      </div>
      ${i}
    </section>`;return s`<div class="all-questions">
    ${S(Fe).map((t,n)=>e(Fe,n,on(n),wm(n)))}
    ${S(Ne).map((t,n)=>e(Ne,n,Ba(n),fm(n)))} ${gr()} ${Ea()}
  </div>`}function lw(e,t){let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"";return s`<p class="order ${a.is_old?"old":""}">
    Cast <b>${t.casts}</b> of ${t.name} ahead${n}${se(e.whole)?", for the whole run":""}.
  </p>`}function uw(e,t,n){return s`<h3>
      Weigh for ${t.name} ${se(e.whole)?s`<small>for the whole run</small>`:u}
    </h3>
    ${T({key:`decorations.${n}.make`,label:`Melt of ${t.material}`,shown:Y(a.units,_e(t,"make_")),size:"weigh",of:`decorations.${n}.make_g`})}
    ${T({key:`decorations.${n}.each`,label:"Each weighs",note:`${k(t.volume_each_ml,2)} ml`,shown:M(a.units,t.mass_each_g,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?s`<p>${xt(t.casting_s)} of casting.</p>`:u} ${cw(t,n)}`}function cw(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return u;let i=l=>l===null?"not known":R(ae(a.units,l)),r=l=>{let c=(o?.embeds??[]).map(l).filter(p=>p!==null);return c.length?R(ae(a.units,Math.min(...c))):"none near"};return s`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?s`<div>
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
      ${o?s`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${r(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${r(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${r(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${r(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${k(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${tn(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function pw(e,t){let n=vm(e.dust,S(Ne),z("run",`/dust/${t}/name`),t);if(!n)return u;let o=_("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=T({key:`dust.${t}`,label:n.name,shown:Y(a.units,_e(n,"")),size:"weigh",of:`${e.place}.dust.${t}.g`});return s`${r}${i?s`<p class="alarm">
          Nothing of a topping or a decoration sees the air, so it comes to nothing: say what is weighed for one piece.
        </p>`:u}`}function xm(e){let{cut:t}=e;return s`<div class="side">
      ${t?s`<p class="order ${a.is_old?"old":""}">
              Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}.
            </p>`:u}
      ${rn("cut",e)}
    </div>
    <div class="weights">
      ${t?s`${T({key:"cut.bar",label:"A bar on average, fresh",note:dw(t),shown:M(a.units,e.piece.fresh_g),size:"weigh",of:"cut.bars_each"})}
            ${T({key:"cut.offcuts",label:"Offcuts",shown:M(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
            ${mw(t)}`:u}
    </div>
    <div class="all-questions">${hr()} ${zo()?u:gr()}</div>`}function dw(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${k(n,1)} to ${k(o,1)} g`}function mw(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>At ${t.size_text} ${t.direction} it gives ${t.bars} bars.</li>`)}
  </ul>`:u}var Ct="/pour/layers",Ft={at:Ct,in_order:!0},Ia=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],$r=()=>S(Ft);function fw(){let e=t=>$r().some(n=>t in n);return Ia.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function Ha(e){let t=$r(),n=fw();return t.length?s`<h3>
      Layers, lowest first ${e&&xe(e)?s`<small>${xe(e)}</small>`:u}
    </h3>
    ${x({question:"All of them by",at:Ct,is_told_elsewhere:!0,chosen:n,answers:Ia,puts:o=>gw(o,e)})}
    <div class="items">${t.map((o,i)=>_w(o,i,n,e))}</div>
    ${N(Ft,"One more layer on top",()=>j(Ft,{name:hw(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${N(Ft,"Pour it in layers",()=>j(Ft,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function hw(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function Tm(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function gw(e,t){let n=$r(),o=a.is_old?void 0:t,i=(r,l)=>{let c=Tm(o,r,l);return e==="parts"||!c||e==="depth"&&"tilted"in r?"":e==="depth"?`${k(c.to_mm-c.from_mm,3)} mm`:`${k(c.mass_each_g,3)} g`};return n.map((r,l)=>{let c=_r(l),p=e!=="parts"&&n.length>1&&l===n.length-1;return{...c,...p?{rest:!0}:{[e]:i(r,l)}}})}var _r=e=>K("run",`${Ct}/${e}`,[...Ia.map(([t])=>t),"rest"]);function _w(e,t,n,o){let i=`${Ct}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=Tm(o,e,t);return s`<div class="part" id=${E(Ft,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?$w(o,l,t):s`<p class="part-title">${r}</p>`} ${W("run",i)}
    ${ww(e,t,n,r)}
    ${o&&l?l.colours.map((c,p)=>bw(o,c,t,p)):u}
    ${D({name:i,pointers:["name","colours","tilted"].map(c=>`${i}/${c}`),summary:"Name, colours, prop",body:()=>s` ${m({label:"Name of the layer",at:`${i}/name`})} ${xw(i,r)} ${Rw(i,t)}
        ${V(Ft,t,r)}`})}
  </div>`}function $w(e,t,n){return T({key:`pour.layer.${n}`,label:t.name,note:`${Ms(ae(a.units,t.to_mm-t.from_mm))} thick, ${Ms(M(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?M(a.units,t.g):Y(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function bw(e,t,n,o){return T({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${k(t.teaspoons,1)} tsp`:"",shown:ut(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function ww(e,t,n,o){if(n==="parts")return yw(e,t,o);let i="rest"in e;return s`${i?u:m({label:`${o}, ${n}`,at:`${Ct}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?kw(t,n):vw(t,n)}
    >
      takes the rest
    </button>`}function yw(e,t,n){let o=`${Ct}/${t}/parts`,i=r=>()=>{f({typed:void 0}),re("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${m({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function vw(e,t){let n=$r().map((o,i)=>i===e?{..._r(i),rest:!0}:o.rest?{..._r(i),[t]:""}:o);ie("run","takes the rest",Ct,n)}function kw(e,t){let n=`${Ct}/${e}`;ie("run","amount of the layer",n,{..._r(e),[t]:""},et("run",`${n}/${t}`))}function xw(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${S(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${E(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${V(n,i,l)}
      </div>
      ${W("run",r)}
      <div class="row">
        ${m({label:"Colour",at:`${r}/name`})}
        ${m({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${m({label:"Weight of a loose ml",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"Bulk density; needed for spoons."})}
      </div>
      ${St("run",r,l)}
    </div>`})}
  ${N(n,"Add a colour",()=>j(n,{name:"",rate:""},"colour"))}`}var Tw=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, behind it"],["-y","\u2212y, before it"]];function Rw(e,t){let n=`${e}/tilted`,o=_("run",`${n}/low_side`);return t===S(Ft).length-1&&_("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:Re({at:n,name:"the prop",title:"The mould is tilted",add:"Prop the mould up for this layer",blank:{angle:"",low_side:""},body:()=>s`${m({label:"Leans by",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${x({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o,answers:Tw,puts:r=>r})}
        ${m({label:"Low side, or its direction",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var dt=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function ja(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=dt()==="depth"?n-o:o;f({typed:void 0}),re("run",`/pour/line/${dt()}`,`${k(i,2)} mm`)}function Rm(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Dn($(a.run.now,`/pour/line/${dt()}`));return n===void 0?e.pour.below_brim_mm:dt()==="depth"?t-n:n}function Sw(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function Aw(e){if(!a.measured)return u;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Rm(e),{share:o,h:i}=cm(e,t-n),r=p=>Sw(p,d=>ja(e,n+d*i)),l=p=>{let d={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[p.key];d!==void 0&&(p.preventDefault(),ja(e,n+d))},c=p=>p&&(p.style.top=`${100*o}%`);return queueMicrotask(()=>c(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${k(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${R(ae(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function Pw(e){let{pour:t}=e,n=R(ae(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each";return s`<p class="order ${a.is_old?"old":""}">
    ${o}, <b>${R(M(a.units,t.mass_each_g))}</b> ${i}.
  </p>`}function Sm(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>ja(e,Rm(e)+i);return s`<div class="side">
      ${Pw(e)} ${rn("pour",e,Aw(e))} ${Pm(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">+ 1 mm</button>
        ${m({label:dt()==="depth"?"Deep":"Below brim",at:`/pour/line/${dt()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">− 1 mm</button>
      </div>
      ${T({key:"pour.mm",label:"1 mm is",shown:ue(a.units,t.ml_per_mm,2),note:`${Qe(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${T({key:"pour.each",label:"Weigh into each",shown:M(a.units,t.mass_each_g),size:"weigh",note:`${k(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
    </div>
    <div class="weights">
      ${Ot(e)} ${Na("pour","Weigh for the base",t.formula)} ${Ua(t,n,"pour")}
      ${T({key:"pour.make",label:"Base to make",shown:M(a.units,t.make_g),size:"weigh",of:`${n}.make_g`})}
      ${T({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>
    <div class="more">${Ha(e)} ${Oo("pour")}</div>`}function Am(){let e=dt();return s`<div class="side">
      ${Pm()} ${W("run","/pour/line")}
      ${m({label:e==="depth"?"Deep":"Below brim",at:`/pour/line/${e}`,unit:"mm"})}
    </div>
    <div class="more">${Ha()} ${Oo("pour")}</div>`}function Pm(e){let t=n=>{if(n===dt())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;ie("run","pour line","/pour/line",{[n]:o===void 0?"":`${k(o,3)} mm`})};return Q("The pour line is measured",dt(),[["below_brim","From the brim"],["depth","From the floor"]],t)}function Dw(e){return e.teaspoons?`about ${k(e.teaspoons,1)} tsp`:""}function Mw(e){let t=e.set_aside_for_colours_g?`${R(Y(a.units,{g:e.set_aside_for_colours_g,scale_step_g:e.scale_step_g}))} of it for the colours`:"";return[Dw(e),t].filter(Boolean).join(", ")}function Na(e,t,n){return s`<div class="weigh-head">
    <h3>${t} <small>${n}</small></h3>
    <button
      type="button"
      @click=${()=>Ye(e)}
      aria-label="Change the formula ${e==="pour"?"of the base":"of the topping"}"
    >
      Change the formula
    </button>
  </div>`}function Ua(e,t,n){return s`${Fi(e).map(({one:o,i})=>za(o,i,t,n))}`}function za(e,t,n,o){return T({key:`${o}.${t}`,label:e.name,note:Mw(e),shown:ut(a.units,e),size:"weigh",of:`${n}.ingredients.${t}.g`})}var Ow=[0,50,80,100];function Dm(e){let{pipe:t}=e;return t?s`<div class="side">
      <p class="order ${a.is_old?"old":""}">
        Pipe <b>${k(t.volume_each_ml,0)} ml</b> on each, ${R(M(a.units,t.mass_each_g))} at this
        whip.
      </p>
      ${rn("pipe",e)}
      ${T({key:"pipe.each",label:"Topping on each",shown:ue(a.units,t.volume_each_ml),note:`${k(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${Cw(e)} ${Fm()} ${Iw(e)}
    </div>
    <div class="weights">
      ${Ot(e)} ${Na("pipe","Weigh for the topping",t.formula)}
      ${e.whippings.map((n,o)=>Fw(e,n,o))}
      ${T({key:"pipe.density",label:"Whipped density",note:`overrun ${k(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`})}
      ${Zs(t)}
    </div>
    <div class="more">${Qs(t)} ${Ys()}</div>`:qa()}var Vo=e=>e===0?"pipe":`pipe.whipping${e}`,sn=(e,t)=>`${e.place}.pipe.whippings.${t}`;function Va(e,t){let n=Ao(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function Fw(e,t,n){let o=Vo(n);return s`${Va(e,t)} ${Ua(t,sn(e,n),o)}
  ${T({key:`${o}.make`,label:"Topping to make",note:Ao(e,t),shown:M(a.units,t.make_g),size:"weigh",of:`${sn(e,n)}.make_g`})}`}function qa(){return s`<div class="more">${Qs()}</div>
    <div class="side">${Fm()} ${_("run","/pipe/whip_now")===void 0?u:Om()}</div>
    <div class="weights">${Zs()} ${Np()}</div>
    <div class="more">${Ys()}</div>`}var Mm=e=>xe(e)?s`<small>${xe(e)}</small>`:u;function Cw(e){return s`<h3>This bowl, now ${Mm(e)}</h3>
    ${Om()} ${e.whippings.map((t,n)=>Ew(e,t,n))}`}function Ew(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whip.`:`Enough for the ${t.pieces} to make.`;return s`${Va(e,t)}
  ${o==null?u:T({key:`${Vo(n)}.now`,label:"This bowl pipes now",note:r,shown:[G(o,"piece"),""],size:"weigh",of:`${sn(e,n)}.pieces_now`})}
  ${Bw(e,t,n)}`}function Om(){let e={holds:_("run","/pipe/whip/holds")??"",net:""};return Re({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:Lw})}function Lw(){return s`<div class="row">
    ${m({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})}
    ${m({label:"Cup holds",at:"/pipe/whip_now/holds",unit:"ml",short:!0})}
  </div>`}function Bw(e,t,n){return t.readings?.length?s`<table class="readings">
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
        ${t.readings.map(o=>s`<tr class=${o.planned?"planned":""}>
              <th scope="row">${k(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${k(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${tn(`${Vo(n)}.readings`,"Show the calculation",`${sn(e,n)}.readings`)}`:u}function Fm(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(z("run",e))?.[1]?.replace(",",".")),n=Xe("run",e);return s`<h3 id="recess">How much of the headspace below the brim does the topping fill?</h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${Ow.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>re("run",e,`${o} %`)}
          >
            ${Ww(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${m({label:"Or as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function Ww(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${F`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function Iw(e){let t=e.whippings.map(i=>({one:i,words:Hw(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?u:s`<h3>Limits of whisk, bowl and time ${Mm(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${Va(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${tn("pipe.limits","How the limits come about",`${sn(e,0)}.limits`)}`}function Hw({piping_s:e,lye_spoonfuls:t}){return[e?`${xt(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${xt(t.altogether_s)}`:""].filter(Boolean).join("; ")}function Em(e){if(!Uc(e))return u;let{whole:t}=e,{batches:n}=t.pieces,o=se(t)?`${G(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${Cm(e,"pour","The base, whole run")}
      ${t.pipe?Cm(e,"pipe","The topping, whole run"):u} ${jw(e)}
    </div>
  </section>`}function Cm(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...Fi(i),...Fn(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:c})=>br(`${t}.ingredients.${c}.g`,l.name,ut(a.units,l)))}
    ${br(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",M(a.units,i.make_g))}
  </div>`}var br=(e,t,n)=>T({key:`needs.${e}`,label:t,shown:n,of:e});function jw(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((c,p)=>({layer:r,one:c,i:l,j:p}))),o=t.dust??[];if(!n.length&&!o.length)return u;let i=r=>Y(a.units,_e(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:c,j:p})=>br(`pour.layers.${c}.colours.${p}.g`,`${l.name}, for ${r.name}`,ut(a.units,l)))}
    ${o.map((r,l)=>br(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function Bm(e){return s`<section class="shelf" aria-labelledby="shelf-title">
    <h2 id="shelf-title">Lye</h2>
    ${Ot(e)}
    <div class="jugs">
      ${Lm({slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:e.batch.pieces,key:"pour"})}
      ${e.whippings.map((t,n)=>{let o=Ao(e,t);return Lm({slot:"pipe",title:`Lye for the topping${o&&`, ${o}`}`,batter:t,place:sn(e,n),pieces:e.batch.pieces,key:Vo(n)})})}
    </div>
    ${Uw(e)} ${Sa()} ${Aa(e)}
  </section>`}function Lm({slot:e,title:t,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,c=Qt(e,i).length>0,p=`danger-${r.replaceAll(".","-")}`,d=r===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${Fn(n).map(({one:h,i:g})=>za(h,g,o,r))}
    ${T({key:`${r}.strength`,label:"Lye strength",note:`water ${k(n.water_to_pure_alkali,2)} : 1 to alkali; water ${k(n.water_percent_of_fats,1)} % of the fats`,shown:[`${k(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${T({key:`${r}.superfat`,label:"Superfat as weighed",shown:[`${lt(l)}${c?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`})}
    ${To(e,p,i)} ${Wm(n.superfat_percent)} ${Nw(n,o,r)}
    ${!d||_(e,"/superfat")===void 0?u:m({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:c?p:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Wm(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:r}=e,l=`It lies between ${lt(t)} and ${lt(n)}, as lots, purity and scales may fall`,c=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${lt(o)} and ${lt(i)}.`,p=r[0],d=p?s` Most of the doubt is ${p.cause}: ${p.remedy}.`:u;return Ds(t)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${c}
    ${p?d:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${c} Some fat is left over even at the lowest.${d}</p>`}function Nw(e,t,n){return e.heat?s`${Im(e.heat)} ${tn(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:u}function Im(e){let t=o=>R(Xc(a.units,o)),n=e.cooling.map(o=>`${o.shortest_min*60?xt(o.shortest_min*60):"at once"} to ${xt(o.longest_min*60)} in ${o.in}`);return s`<p class="aside of-plan">
    Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at
    ${t(e.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function Uw(e){let t=e.lye_pot;if(!t)return u;let{units:n}=a,o=(i,r,l,c,p="")=>T({key:`pot.${i}`,label:r,note:p,shown:l,size:"weigh",of:`${e.place}.lye_pot.${c}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${k(t.strength_percent,1)} %${xe(e)&&`; ${xe(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",Y(n,_e(t,"water_")),"water_g")}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,Y(n,_e(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",Y(n,_e(t,"lye_")),"lye_g",zw(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,Y(n,_e(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${lt(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,Y(n,_e(i,"top_up_")),`shares.${r}.top_up_g`):u}
        ${To(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?Wm(i.superfat):u}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${R(Y(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${t.heat?Im(t.heat):u}
  </div>`}function zw(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=_e(e,"lye_"),i=Y(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${R(i)} with the pot: make up with water to that after cooling`}function Hm(e){let t=xe(e);return s`<section class="losses" aria-labelledby="losses-title">
    <h2 id="losses-title">Losses and scales</h2>
    <p class="aside">
      ${t?`Of ${t}: in`:"In"} the pieces ${R(M(a.units,e.pour.in_pieces_g))} of base, lost
      ${R(M(a.units,e.pour.lost_g))}${e.pipe?`; of topping ${R(M(a.units,e.pipe.in_pieces_g))}, lost ${R(M(a.units,e.pipe.lost_g))}`:""}.
    </p>
    <div class="row">
      ${Mo("pour",e.pipe&&"Base")} ${e.pipe?Mo("pipe","Topping"):u}
    </div>
    <div class="row">
      ${m({label:"Large scale, smallest step",at:"/scales/large/step",unit:"g",short:!0})}
      ${m({label:"Large scale, most it weighs",at:"/scales/large/most",unit:"g",short:!0})}
      ${m({label:"Fine scale, smallest step",at:"/scales/fine/step",unit:"g",short:!0})}
      ${m({label:"Fine scale, most it weighs",at:"/scales/fine/most",unit:"g",short:!0})}
    </div>
  </section>`}function jm(e){let t=Ai(e);return s`${Vw(e)} ${qw(t)} ${Bm(t)} ${Em(t)} ${Hm(t)}`}function Nm(){let e=je();return s`${Um()} ${Fa()}
    <div class="lanes">
      ${Et("pour","Pour",Am())} ${e?Et("pipe","Pipe",qa()):u}
      ${zo()?Et("decorate","Decorate",Wa()):u}
      ${we()?Et("cut","Cut",hr()):u}
    </div>
    ${Kd()}`}function Um(e=u){return s`<div class="row">
    ${m({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${m({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
    ${In("Mould","/pour/mould",a.files?.moulds)}
    ${In("Base","/pour/formula",a.files?.formulas)}
    ${je()?In("Topping","/pipe/formula",a.files?.formulas):u} ${e}
  </div>`}function Vw(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,c=se(e)?`${l} batches, ${G(o,"filling")}`:Pi(o,i),p=T({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${e.cut?"loaves":"casts"}, ${c}`:c,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"});return s`<section class="order-of" aria-labelledby="run-title">
    <div>
      ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:u}
      ${e.from_studio?s`<p class="aside">From the studio: ${e.from_studio.text}.</p>`:u}
    </div>
    ${Um(p)}
    <div class="batches">${sm(e)} ${Fa()}</div>
    <p class="aside">Tap a figure marked = to see how it is calculated.</p>
  </section>`}function qw(e){let t=je();return s`<div class="lanes">
    ${Et("pour","Pour",Sm(e))} ${t?Et("pipe","Pipe",Dm(e)):u}
    ${zo()?Et("decorate","Decorate",km(e)):u}
    ${we()?Et("cut","Cut",xm(e)):u}
    ${t?u:Jw("Pipe","This run has no topping.","Add a topping",Hp,jp())}
    ${zo()||we()?u:ym()}
  </div>`}function Et(e,t,n){let o=a.folded.has(e);return s`<section class="lane ${e}" aria-labelledby="lane-${e}">
    <div class="lane-head">
      <h2 id="lane-${e}" tabindex="-1">${t}</h2>
      <button
        type="button"
        aria-expanded=${o?"false":"true"}
        aria-label="${o?"Unfold":"Fold"} ${t}"
        @click=${()=>Je("folded",e)}
      >
        ${o?"Unfold":"Fold"}
      </button>
    </div>
    ${o?u:s`<div class="lane-body">${n}</div>`}
  </section>`}function Jw(e,t,n,o,i=u){return s`<section class="lane unused" aria-label=${e}>
    <h2>${e}</h2>
    <p>${t}</p>
    <button type="button" @click=${o}>${n}</button>${i}
  </section>`}var Kw={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function zm(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${Kw[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function Vm(e,t){let n=e?.batches.findIndex(({numbers:l})=>l.includes(t))??-1;if(!e||n<0)return;let o=e.batches[n],i=t===1,r=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:e,batch:o,place:`batches.${n}`,vessels:r,mark:o.mark}}function Xn(e){let t=xn(e);return t?.finished_at?"done":t||Tn(e)?"under way":"not begun"}var Gw=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:e})=>e));function Yw(e){let{chosen:t}=a.bench;if(t!==void 0&&t<=e)return t;let n=Array.from({length:e},(i,r)=>r+1),o=i=>n.find(r=>Xn(r)===i);return o("under way")??o("not begun")??1}function Ja(){let e=Gw(),t=Yw(e),n=xn(t),o=Vm(a.plan,t);return{number:t,of:e,kept:n,planned:o,weights:n?Vm(n.plan,t):o}}var an=({kept:e})=>!e&&a.is_old,eo=({plan:e,batch:t})=>e.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===t.pieces));var Qw=6,Zw={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Jm({number:e,of:t}){if(t<2)return u;let n=Array.from({length:t},(i,r)=>r+1),o=i=>`Batch ${i}, ${Xn(i)}`;return t>Qw?s`<select
      aria-label="Which batch is weighed"
      @change=${i=>qm(Number(i.target.value))}
    >
      ${n.map(i=>s`<option value=${i} ?selected=${i===e}>${o(i)}</option>`)}
    </select>`:Q("Which batch is weighed",String(e),n.map(i=>[String(i),s`<span class="status" aria-hidden="true">${Zw[Xn(i)]}</span> ${i}<small>
          ${Xn(i)}</small
        >`]),i=>qm(Number(i)))}function qm(e){pc(e),H(`Batch ${e}, ${Xn(e)}`)}var wr="";function Km(e){let{kept:t,number:n}=e;if(!t)return u;if(t.finished_at)return Xw(e,t.finished_at);let i=(e.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!Gt(n,l).is_done).length,r=()=>i?Gm(t.id):void ws(n);return s`<div class="batch-end">
    <p class="aside">Begun ${Qm(t.begun_at)}; its weights stay as they were then.</p>
    ${wr===t.id?Ym(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{ws(n)}):s`<button type="button" class=${i?"":"strong"} ?disabled=${Tn(n)} @click=${r}>
            This batch is done
          </button>`}
  </div>`}function Xw({kept:e,number:t},n){let{id:o}=e;return s`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Qm(n)}.</p>
    ${wr===o?Ym("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{yo(t)}):s`<button type="button" @click=${()=>Gm(o)}>Start this batch anew</button>`}
  </div>`}function Gm(e){wr=e,L(),$e(Z("batch-stays"))}function Ym(e,t,n){let o=()=>{wr="",L(),$e(Z("run-title"))};return s`<p><b>${e}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${t}</button>
    </div>`}var ey=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Qm=e=>ey.format(new Date(e));var ty={pour:"Base",pipe:"Topping"},Zm=e=>new Map(e.flatMap(t=>t.rows.map(n=>[n.key,{row:n,vessel:t}])));function Xm(e,t){let[n,o]=[Zm(e),Zm(t)],i=[...e,...t].some(({batter:d})=>d==="pipe"),r,l=({row:d,vessel:h})=>{let g=!i||h.batter===r;return r=h.batter,(g||!r?"":`${ty[r]}: `)+d.name+(d.adding?` for ${d.adding}`:"")},c=[...n].flatMap(([d,h])=>{let g=o.get(d)?.row;return g?.shown===h.row.shown?[]:[`${l(h)} ${h.row.shown}, ${g?`now ${g.shown}`:"now left out"}`]}),p=[...o].filter(([d])=>!n.has(d)).map(([,d])=>`${l(d)}, now ${d.row.shown}`);return[...c,...p]}var Ka=3,Ga=new Map,Ya="";function ny(e){let{kept:t,weights:n,planned:o,of:i}=e;if(!t||t.finished_at||!n)return;let{complaint:r}=a;if(r&&!Ll(r))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:J(r)};if(!o){if(!a.plan)return;let d=i>1?`the run has no batch ${e.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:d,mark:d}}if(o.mark===n.mark)return;let l=Xm(n.vessels,o.vessels),c=new Set(eo(n).map(({text:d})=>d)),p=eo(o).flatMap(({text:d})=>c.has(d)?[]:[d]);return l.length||p.length?{told:l,dangers:p,mark:o.mark}:void 0}function ef(e){let t=ny(e),{kept:n}=e;if(!t||!n)return u;if(Ga.get(n.id)===t.mark)return ry(n.id);let o=t.dangers.length>0||t.refusal!==void 0;return s`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${oy(t)}
    </p>
    ${iy(t)}
    ${t.dangers.map(i=>s`<p class="danger"><strong>${Yt}</strong> As it is now: ${i}</p>`)}
    ${Ya===n.id?ly(e):sy(e,t)}
  </div>`}function oy({told:e,refusal:t}){if(t!==void 0)return s`<strong>No weights can be given as it is now:</strong> ${t}.`;let n=e.length-Ka;return s`${e.slice(0,Ka).join("; ")}${n>0?` and ${n} more.`:"."}`}var iy=({told:e})=>e.length>Ka?s`<details>
        <summary>All ${e.length} changes</summary>
        <p>${e.join("; ")}.</p>
      </details>`:u;function ry(e){return s`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Ga.delete(e),L())}>What has changed</button>
  </div>`}function sy(e,{mark:t,refusal:n}){let{id:o}=e.kept;return s`<div class="row">
    <button type="button" class="strong" @click=${()=>{Ga.set(o,t),L(),$e(Z("run-title"))}}>Keep weighing</button>
    ${n===void 0?s`<button type="button" @click=${()=>ay(e)}>Start this batch anew</button>`:u}
  </div>`}function ay(e){let{ticks:t,weigh_cup:n,id:o}=e.kept;if(!Object.keys(t).length&&n===void 0)return void yo(e.number);Ya=o,L(),$e(Z("keep-weighing"))}function ly(e){let t=Object.keys(e.kept.ticks).length,n=()=>{Ya="",L(),$e(Z("run-title"))},o=()=>{n(),yo(e.number)};return s`<p>
      <b>${t===1?"The 1 tick":`All ${t} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var tf=({text:e})=>s`<p class="danger"><strong>${Yt}</strong> ${e}</p>`;function nf(e){let t=new Set(a.dangers.run.map(({text:o})=>o)),n=eo(e).filter(({text:o})=>!t.has(o));return n.length?s`<div class="dangers" role="alert">${n.map(tf)}</div>`:u}var uy=({vessel:e})=>["lye","lye_pot","share"].includes(e),cy=({batter:e},t)=>!e||!t.batter||e===t.batter;function of(e,t){if(!uy(t))return u;let n=eo(e).filter(o=>cy(o,t));return n.length?s`<div class="dangers">${n.map(o=>s`${tf(o)} ${py(o)}`)}</div>`:u}function py({batter:e,topic:t}){return!e||t==="heat"?s`<button type="button" class="to-cause" @click=${my}>To the cautions</button>`:s`<button type="button" class="to-cause" @click=${()=>dy(e)}>
    To the superfat of the ${e==="pour"?"base":"topping"}
  </button>`}function dy(e){Ye(e),requestAnimationFrame(()=>$e(et(e,"/superfat")))}function my(){f({view:"watch"}),$e(Z("watch-title"))}var Qa=(e,t)=>s`<p class="do ${an(e)?"old":""}">${t}</p>`;function rf(e,{batch:t,plan:n}){let{below_brim_mm:o,mass_each_g:i}=t.pour,r=o<.05?"Pour to the brim":`Pour to ${R(ae(a.units,o))} below the brim`;return Qa(e,s`${r}, <b>${R(M(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function sf(e,{batch:t}){let n=t.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Qa(e,s`Whip until the level weigh-cup holds <b>${R(M(a.units,n.net_g))}</b>.`):u}function af(e,{batch:t}){let{pipe:n}=t;return n?Qa(e,s`Pipe <b>${k(n.volume_each_ml,0)} ml</b> on each, ${R(M(a.units,n.mass_each_g))} at the
      planned whip.`):u}var lf=(e,t,n)=>{let o=new Map;for(let i=t;i<=n;i++)o.set(e[i],i);return o},uf=Ci(class extends Ln{constructor(e){if(super(e),e.type!==ct.CHILD)throw Error("repeat() can only be used in text expressions")}dt(e,t,n){let o;n===void 0?n=t:t!==void 0&&(o=t);let i=[],r=[],l=0;for(let c of e)i[l]=o?o(c,l):l,r[l]=n(c,l),l++;return{values:r,keys:i}}render(e,t,n){return this.dt(e,t,n).values}update(e,[t,n,o]){let i=rp(e),{values:r,keys:l}=this.dt(t,n,o);if(!Array.isArray(i))return this.ut=l,r;let c=this.ut??=[],p=[],d,h,g=0,w=i.length-1,v=0,A=r.length-1;for(;g<=w&&v<=A;)if(i[g]===null)g++;else if(i[w]===null)w--;else if(c[g]===l[v])p[v]=Tt(i[g],r[v]),g++,v++;else if(c[w]===l[A])p[A]=Tt(i[w],r[A]),w--,A--;else if(c[g]===l[A])p[A]=Tt(i[g],r[A]),Bn(e,p[A+1],i[g]),g++,A--;else if(c[w]===l[v])p[v]=Tt(i[w],r[v]),Bn(e,i[g],i[w]),w--,v++;else if(d===void 0&&(d=lf(l,v,A),h=lf(c,g,w)),d.has(c[g]))if(d.has(c[w])){let q=h.get(l[v]),ln=q!==void 0?i[q]:null;if(ln===null){let to=Bn(e,i[g]);Tt(to,r[v]),p[v]=to}else p[v]=Tt(ln,r[v]),Bn(e,i[g],ln),i[q]=null;v++}else Li(i[w]),w--;else Li(i[g]),g++;for(;v<=A;){let q=Bn(e,p[A+1]);Tt(q,r[v]),p[v++]=q}for(;g<=w;){let q=i[g++];q!==null&&Li(q)}return this.ut=l,Ei(e,p),ge}});function cf(e,{shown:t,beside:n}){if(e==="both")return[t,n];let o=e==="us"?"oz":"g";return[Ze(n)===o?n:t,""]}function pf({batch:e,plan:t,place:n},o,i){switch(o.vessel){case"fats":case"lye":case"batter":return fy(o,i,e,n);case"layers":return hy(i,e.pour.layers??[],`${n}.pour.layers`);case"dust":return Za(i.name,e.dust,`${n}.dust`);case"lye_pot":return i.role==="water"?`${n}.lye_pot.water_g`:Za(i.name,e.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let r=t.decorations.length===1?0:-1;return r<0?void 0:`decorations.${r}.make_g`}case"share":return}}function Za(e,t,n){let o=t.findIndex(i=>i.name===e);return o<0?void 0:`${n}.${o}.g`}function fy(e,t,n,o){let i=Number(/^pipe\.(\d+)\./.exec(e.key)?.[1]??1)-1,[r,l]=e.batter==="pipe"?[n.pipe?.whippings[i],`${o}.pipe.whippings.${i}`]:[n.pour,`${o}.pour`],c=(r?.ingredients??[]).findIndex(({name:p,goes_into:d})=>p===t.name&&d===e.vessel);return c<0?void 0:`${l}.ingredients.${c}.g`}function hy(e,t,n){let o=(t??[]).findIndex(({name:i})=>i===(e.adding??e.name));return o<0||!e.adding?o<0?void 0:`${n}.${o}.g`:Za(e.name,t[o].colours,`${n}.${o}.colours`)}function Xa(e,t,n){let o=n.words.filter(({is_order:r})=>r),i=n.rows.every(({key:r})=>Gt(e.number,r).is_done);return s`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${df(n)}>
    <div class="vessel-head">
      <h3 id=${df(n)}>
        ${n.title}${n.times?s` <b>${n.times} times</b>`:u}${n.day_before?s` <b>the day before</b>`:u}${i?s` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:r})=>s`<p class="vessel-order">${r}</p>`)}
    </div>
    ${of(t,n)}
    ${uf(n.rows,({key:r})=>r,r=>gy(e,t,n,r))}
  </section>`}var df=({key:e})=>`vessel-${e.replaceAll(".","-")}`;function gy(e,t,n,o){let{is_done:i,is_waiting:r}=Gt(e.number,o.key),[l,c]=cf(a.units,o),p=an(e),h=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return s`<div class="weigh ${o.role} ${i?"done":""} ${r?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${C(i)}
        ?disabled=${e.kept?.finished_at!==void 0}
        @change=${g=>_y(e,t,o,g.target)}
      />
      <span class="name"
        >${o.name}${h?s` <small>${h}</small>`:u}${r?s` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?s`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${p?"old":""}"><b>${l}</b>${c?s` <i>${c}</i>`:u}</span>
    </label>
    ${$y(e,t,n,o)}
  </div>`}function _y(e,{mark:t},n,o){if(!an(e))return lc(e.number,t,n.key,o.checked);o.checked=!o.checked,H("Not ticked: what is struck through is not to be weighed.")}function $y(e,t,n,o){let{planned:i}=e,r=i&&i.mark===t.mark?pf(i,n,o):void 0;if(r===void 0)return u;let l=`weigh.${e.number}.${o.key}`,c=a.open.has(l),p=`sum-${l.replaceAll(/[^\w]/g,"-")}`;return s`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Je("open",l)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?s`<div class="sum" id=${p}>${Vs(r)}</div>`:u}`}function el(e){let t=e.flatMap(({title:n,words:o})=>o.filter(({is_order:i})=>!i).map(({text:i})=>({title:n,text:i})));return t.length?s`<details class="to-know">
    <summary>Heat, cooling and more to know</summary>
    ${t.map(({title:n,text:o})=>s`<p><b>${n}:</b> ${o}</p>`)}
  </details>`:u}function mf(e,t){let{planned:n,whip_today:o}=a;return!t||!n?void 0:(o?.of===n&&o.batch===e&&o.reading===t||by(e,t),o?.batch===e&&o.reading===t?o:void 0)}var tl=!1;async function by(e,t){let{planned:n}=a;if(tl||!n)return;tl=!0;let o={of:n,batch:e,reading:t},i={holds:$(n.run,"/pipe/whip/holds")??"",net:t};try{let r=await ri({...n,run:B(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...wy(r,e)}})}catch(r){if(!(r instanceof y))throw r;f({whip_today:{...o,complaint:J(r.complaint)}})}finally{tl=!1}}function wy(e,t){let n=e.batches.find(({numbers:o})=>o.includes(t));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var ol,nl,yy=e=>ol??(Ze(e)==="oz"||!e&&a.units==="us"?"oz":"g");function ff(e,t){let n=t.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return u;let o=$s(e.number),i=yy(o),r=e.kept?.finished_at!==void 0;return s`<div class="cup">
    <label for="weigh-cup">Today's weigh-cup, net</label>
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${C(nl??o)}
        ?disabled=${r}
        @input=${l=>nl=l.target.value}
        @change=${l=>ky(e,t,l.target.value,i)}
      />
      ${Q("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],vy)}
    </div>
    ${xy(e,t,n,o)} ${Ry(t,n)}
  </div>`}function vy(e){ol=e,L()}function ky(e,{mark:t},n,o){nl=void 0;let i=Mn(n)?`${n.trim()} ${o}`:n.trim();if(ol=void 0,i===$s(e.number))return L();if(an(e))return H("Not taken: the weights are not those of what is typed."),L();uc(e.number,t,i)}function xy(e,t,n,o){if(!o)return u;let i=mf(e.number,o);return i?i.complaint!==void 0?s`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==t.mark?s`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:s`<div class="today" role="status">
    ${n.map((r,l)=>s`<p>${Ty(r,i.pieces?.[l]??null)}</p>`)}
  </div>`:s`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function Ty({pieces:e,count:t},n){if(n===null)return u;let o=t>1?"Each of these bowls pipes":"This bowl pipes",i=e-n;return s`${o} <b>${G(n,"piece")}</b> now.
    ${i>0?s`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${e} to make.`}`}function Ry(e,t){let n=e.plan.cut?"casts":"pieces";return s`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${t.map(o=>s`<table class="readings">
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
            ${o.readings.map(i=>s`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${R(M(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${k(i.overrun_percent,0)} %</td>
                  <td>${e.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var qo="pour",hf=()=>Ja().kept!==void 0;function gf(){ic();let e=Ja(),t=a.bench.version!==void 0||a.bench.failed!==void 0;return s`<section class="weighing" data-part=${qo} aria-labelledby="run-title">
    ${Sy(e)} ${Py(e)}
    ${e.weights&&t?s`${nf(e.weights)} ${ef(e)} ${Dy(e,e.weights)}`:u}
    ${Km(e)}
  </section>`}function Sy(e){let{weights:t}=e;return s`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${t?.plan.run??String(a.run.now.name??"")}</h1>
    ${t?s`<p class="which">${Ay(e,t)}</p>`:u}
    <div class="row">
      ${m({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Jm(e)}
    </div>
  </div>`}function Ay(e,{plan:t,batch:n,vessels:o}){let i=o.flatMap(c=>c.rows),r=i.filter(({key:c})=>Gt(e.number,c).is_done).length,l=e.of>1?`Batch ${e.number} of ${e.of}: `:"";return s`<b>${l}${ke(t,n)}</b>, ${r} of ${i.length} weighed`}function Py({number:e,weights:t}){let{failed:n,unsent:o,told:i,complaints:r,version:l}=a.bench,c=o!==void 0&&Tn(e);return s`<div class="bench-told" role="status">
    ${i?.batch===e?s`<p class="alarm">${i.words}</p>
            <button type="button" @click=${dc}>I have looked</button>`:u}
    ${c?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?s`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${r.map(p=>s`<p class="alarm">${p}</p>`)}
    ${t||n!==void 0?u:s`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function Dy(e,t){let{vessels:n}=t,o=d=>n.filter(h=>h.batter===d),i=o(),r=i.filter(d=>d.day_before),l=i.filter(d=>!d.day_before),c=o("pipe").length>0,p=d=>d.map(h=>Xa(e,t,h));return s`${Cy(c,i)}
    <div class="batters ${c?"two":""}">
      ${yr("ahead","To have ready",p(r))}
      ${yr("base",c?"Base":"Batter",My(e,t,o("pour"),r))}
      ${c?yr("topping","Topping",[...p(o("pipe")),Oy(e,t),el(o("pipe"))]):u}
      ${yr("after","At the end",p(l))}
    </div>`}var yr=(e,t,n)=>n.some(o=>o!==u)?s`<div class="part-of ${e}">
        <h2 id="weigh-${e}">${t}</h2>
        ${n}
      </div>`:u;function My(e,t,n,o){let i=({vessel:l})=>l==="layers",r=l=>l.map(c=>Xa(e,t,c));return[...r(n.filter(l=>!i(l))),rf(e,t),...r(n.filter(i)),el([...o,...n])]}var Oy=(e,t)=>s`${sf(e,t)} ${ff(e,t)} ${af(e,t)}`,Fy={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function Cy(e,t){let n=[...new Set(t.flatMap(({vessel:i})=>Fy[i]??[]))].join(", ").toLowerCase(),o=[["pour",e?"Base":"Batter"],...e?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===qo)||(qo="pour"),s`<div class="narrow">${Q("What is shown",qo,o,Ey)}</div>`)}function Ey(e){qo=e,L(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var _f=()=>s`${Vn(hf()?"No new weights can be given.":void 0)} ${gf()}`;var Ly={"set-up":jm,watch:zm,money:Gd,mould:Xd,print:im};function $f(e){let t=s`${bi().map(o=>Cn(o))} ${$i().map(En)}`;if(e==="weigh")return s`${t} ${_f()}`;let{plan:n}=a;return s`${t} ${Vn()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?Ly[e](n):By(e)}`}function By(e){return a.complaint?s`<p class="hint">Correct this to see the figures.</p>
    ${e==="set-up"?Nm():""}`:s`<p class="hint">Reading the run ...</p>`}var Wy=()=>{f({new_run:{name:"",mould:"",formula:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function wf(){let e=a.new_run;if(!e)return s`<p class="choice"><button type="button" class="strong" @click=${Wy}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=t.trim()&&n&&o,r=()=>{be(async()=>{await ld({name:t.trim(),mould:n,formula:o}),f({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name">Name</label>
        <input
          id="new-run-name"
          .value=${C(t)}
          @input=${l=>b(e,{name:l.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${bf(e,"mould","Mould",Iy())} ${bf(e,"formula","Base",Hy())}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!i} @click=${r}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${i?u:s`<p class="hint">A run needs a name, a mould and a base.</p>`}
  </section>`}var Iy=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],Hy=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function bf(e,t,n,o){let i=`new-run-${t}`;return s`<div class="field choose">
    <label for=${i}>${n}</label>
    <select id=${i} @change=${l=>b(e,{[t]:l.target.value})}>
      <option value="" .selected=${C(e[t]==="")}>choose ...</option>
      ${o.map(([l,c])=>s`<option value=${l} .selected=${C(l===e[t])}>${c}</option>`)}
    </select>
  </div>`}var jy=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function vf(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(jy),n=e.filter(o=>o.shipped);return s`${Jn("Runs")} ${wf()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?s`<ul class="cards">
              ${t.map(yf)}
            </ul>`:s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      <ul class="cards">
        ${n.map(yf)}
      </ul>
    </section>`}function yf(e){let{pieces:t,mould:n,due:o,made_on:i,changed:r}=e,l=[t===void 0?"":G(t,"piece"),n??"",o?`due ${On(o)}`:"",i?`made ${On(i)}`:r?`changed ${On(r)}`:""].filter(Boolean);return Kn({kind:Ut,one:e,facts:l,picture:Ny(n),open:()=>kt(e.file)})}var Ny=e=>a.files?.moulds.find(t=>t.name===e)?.file??a.catalogue.find(t=>t.name===e)?.path;var kf=document.getElementById("page");function xf(){let{view:e,fault:t}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${qd()} ${Fc()}
    <main id="main" tabindex="-1" data-view=${e} class=${a.is_old&&!Me(e)?"old-now":""}>
      ${t?s`${e==="reading"?s`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${t}</p>`:u}
      ${zy()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var Uy={runs:vf,formulas:Wd,moulds:Hd};function zy(){let{view:e,fault:t}=a;return Ge(e)?$f(e):Me(e)?Uy[e]():e==="formula"?Td():t?u:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Tl(()=>{fd(),Ue(xf(),kf),Tf()});addEventListener("resize",Tf);Ue(xf(),kf);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||Me(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=cr();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Rc();U(a.run)&&Le()});function Vy(){if(!a.run.file)return il();f({fault:void 0}),U(a.run)&&Le(),ee()}function il(){f({fault:void 0}),vd().catch(e=>{f({fault:qy(e)}),e instanceof y&&e.may_pass&&window.setTimeout(il,2e3)})}function qy(e){return e instanceof y&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}function Tf(){let e=document.querySelector(".foremost")?.offsetHeight??0;document.documentElement.style.setProperty("--foremost",`${e}px`)}Gu();yd();Dl(e=>{zn(),e&&Vy()});il();
